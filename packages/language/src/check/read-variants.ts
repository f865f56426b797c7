import { limits } from '../limits.js';
import type { Variant } from '../model/booth-spec.js';
import type { Problem } from '../model/problem.js';
import type { Statement } from '../syntax/tree.js';
import { DIMENSION_WORDS } from '../units/dimension-words.js';
import { applyVariant } from './apply-variant.js';
import { nameOf, slotOf, titleOf } from './block-reader.js';
import { type CheckContext, complain, headerOf, rangeIn, textOf, warn, wholeOf } from './context.js';
import type { LoadedFiles } from './load-files.js';
import { makeContext } from './make-context.js';
import { problemKey } from './problem-key.js';
import { buildProgram } from './program.js';
import { readSpec } from './read-spec.js';
import { letValue } from './read-value.js';
import { unreadOf } from './unread-of.js';
import { inWords, valueDimension } from './value.js';

/** What the variants are read from. */
export interface VariantSource {
  readonly base: CheckContext;
  readonly statements: readonly Statement[];
  readonly loaded: LoadedFiles;
  /** What the parser and the loader complained about. */
  readonly ofFiles: readonly Problem[];
  /** The entry. */
  readonly file: string;
  /** How many are worked out. */
  readonly most: number;
}

/** How many variants of a spec of this size stay within the bounds of what a check may cost. */
export function affordableVariants(statements: readonly Statement[]): number {
  const count = (list: readonly Statement[]): number =>
    list.reduce((sum, statement) => sum + 1 + count(statement.block?.statements ?? []), 0);
  return Math.max(1, Math.floor(limits.variantFacts / Math.max(1, count(statements))));
}

/** Each variant as a spec of its own; only what it adds to the problems of the base is reported. */
export function readVariants(
  { base, statements, loaded, ofFiles, file, most }: VariantSource,
  problems: Problem[],
): Variant[] {
  const known = new Set(base.problems.map(problemKey));
  const warned = new Set(base.problems.filter(({ severity }) => severity === 'warning').map(warningKey));
  const variants: Variant[] = [];
  const all = statements.filter((statement) => statement.fact?.keyword === 'variant');
  for (const statement of all) {
    const named = nameOf(statement);
    if (!named) continue;
    if (variants.length >= most) {
      problems.push({
        id: 'too-many-variants',
        severity: 'error',
        message: `only the first ${most} of ${all.length} variants are worked out`,
        range: headerOf(statement),
        hint: 'split the spec',
      });
      break;
    }
    const twin = variants.find((variant) => variant.name === named.name);
    if (twin) {
      problems.push({
        id: 'name-twice',
        severity: 'error',
        message: `a variant called \`${named.name}\` is already there`,
        range: named.nameRange,
        related: [{ range: twin.nameRange, message: 'the first stands here' }],
      });
      continue;
    }
    const own: CheckContext = { ...base, problems: [], values: [] };
    const changed = applyVariant(own, statements, statement);
    const ctx = makeContext(checkLets(base, own, statement, statements, changed), base.texts, base.references, loaded);
    const spec = readSpec(ctx, file);
    const unread = unreadOf([...ofFiles, ...own.problems, ...ctx.problems], statements, statement);
    variants.push({
      ...named,
      ...titleOf(statement),
      range: wholeOf(statement),
      spec: { ...spec, variants: [], unread },
      written: writtenIn(base, statement),
    });
    for (const problem of [...own.problems, ...ctx.problems]) {
      if (known.has(problemKey(problem)) || warned.has(warningKey(problem))) continue;
      problems.push(placed(problem, statement));
    }
    if ((statement.block?.statements.length ?? 0) === 0 && statement.complete)
      warn({ ...base, problems }, 'variant-empty', headerOf(statement), `variant ${named.name} changes nothing`);
  }
  return variants;
}

/** The changes that are read, as they stand in the text. */
function writtenIn(ctx: CheckContext, variant: Statement): Variant['written'] {
  return (variant.block?.statements ?? []).slice(0, limits.changes).flatMap((change) => {
    if (!change.fact) return [];
    const range = change.block ? headerOf(change) : wholeOf(change);
    return [{ text: textOf(ctx, range), range }];
  });
}

/** A booth written anew in a variant has the warnings of the base at another place; they are not told again. */
function warningKey({ id, severity, message }: Problem): string {
  return `${severity}\n${id}\n${message}`;
}

/** A value that takes another sort of value in a variant is refused there, not wherever it is used. */
function checkLets(
  base: CheckContext,
  own: CheckContext,
  variant: Statement,
  before: readonly Statement[],
  after: readonly Statement[],
): readonly Statement[] {
  const changed = after.filter((statement, i) => statement.fact?.keyword === 'let' && statement !== before[i]);
  if (changed.length === 0) return after;
  const probe: CheckContext = { ...own, program: buildProgram(after, []), letValues: new Map() };
  const refused = new Map<Statement, Statement>();
  for (const statement of changed) {
    const name = nameOf(statement)!.name;
    const old = base.letValues.get(name);
    const value = letValue(probe, name);
    if (!old || old === 'busy' || !value || valueDimension(old) === valueDimension(value)) continue;
    const slot = slotOf(statement, 'value', 'expression')!;
    const range = rangeIn(variant.file, slot);
    const dimension = valueDimension(old);
    complain(
      own,
      'unit-of-wrong-dimension',
      range,
      `\`${name}\` is ${inWords(old)}; \`${textOf(own, range)}\` is ${inWords(value)}`,
      dimension ? { hint: `write it like \`${DIMENSION_WORDS[dimension].example}\`` } : {},
    );
    refused.set(statement, before.find((other) => other.fact?.keyword === 'let' && nameOf(other)?.name === name)!);
  }
  return after.map((statement) => refused.get(statement) ?? statement);
}

/** A problem that a variant brings about elsewhere is told at the variant, and points at that place. */
function placed(problem: Problem, variant: Statement): Problem {
  const { range } = problem;
  if (range.file === variant.file && range.from >= variant.from && range.to <= variant.to) return problem;
  const named = nameOf(variant)!;
  return {
    ...problem,
    range: named.nameRange,
    message: `in this variant, ${problem.message}`,
    related: [{ range, message: 'this is where it shows' }, ...(problem.related ?? [])],
  };
}
