import type { Statement } from '../syntax/tree.js';
import { nameOf, wordIn } from './block-reader.js';
import { type CheckContext, complain, meantHint, refer } from './context.js';

/** The booth that a line names; undefined when it names none, null when there is none of that name, which is reported. */
export function readBoothName(ctx: CheckContext, statement: Statement): string | undefined | null {
  const name = wordIn(statement, 'booth');
  if (!name) return undefined;
  const known = ctx.program.statements.flatMap((other) =>
    other.fact?.keyword === 'booth' ? (nameOf(other)?.name ?? []) : [],
  );
  if (!known.includes(name.word)) {
    if (!ctx.broken.has(name.word))
      complain(ctx, 'unknown-name', name.range, `no booth is called \`${name.word}\``, {
        hint: meantHint(ctx, name.word, known) ?? `declare it: \`booth ${name.word} { … }\``,
      });
    return null;
  }
  refer(ctx, 'booth', name.word, name.range);
  return name.word;
}
