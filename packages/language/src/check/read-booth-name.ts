import type { Statement } from '../syntax/tree.js';
import { nameOf, wordIn } from './block-reader.js';
import { type CheckContext, complain, meantHint, type Program, refer } from './context.js';

const namesOf = new WeakMap<Program, ReadonlySet<string>>();

/** Looked for once in each reading: a long spec names its booths on many lines. */
function boothNames(program: Program): ReadonlySet<string> {
  const known = namesOf.get(program);
  if (known) return known;
  const names = program.statements.flatMap((statement) =>
    statement.fact?.keyword === 'booth' ? (nameOf(statement)?.name ?? []) : [],
  );
  const found = new Set(names);
  namesOf.set(program, found);
  return found;
}

/** The booth that a line names; undefined when it names none, null when there is none of that name, which is reported. */
export function readBoothName(ctx: CheckContext, statement: Statement): string | undefined | null {
  const name = wordIn(statement, 'booth');
  if (!name) return undefined;
  const known = boothNames(ctx.program);
  if (!known.has(name.word)) {
    if (!ctx.broken.has(name.word))
      complain(ctx, 'unknown-name', name.range, `no booth is called \`${name.word}\``, {
        hint: meantHint(ctx, name.word, known) ?? `declare it: \`booth ${name.word} { … }\``,
      });
    return null;
  }
  refer(ctx, 'booth', name.word, name.range);
  return name.word;
}
