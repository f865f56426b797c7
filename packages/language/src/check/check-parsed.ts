import { limits } from '../limits.js';
import type { BoothSpec, Variant } from '../model/booth-spec.js';
import type { Problem } from '../model/problem.js';
import { collectSymbols } from '../symbols/collect-symbols.js';
import type { ParsedFile } from '../syntax/parsed-file.js';
import type { Statement } from '../syntax/tree.js';
import { DIMENSION_WORDS } from '../units/dimension-words.js';
import { applyVariant } from './apply-variant.js';
import { nameOf, slotOf, titleOf } from './block-reader.js';
import type { CheckOptions, CheckResult } from './check-result.js';
import { type CheckContext, complain, headerOf, type ReferenceLog, rangeIn, textOf, warn, wholeOf } from './context.js';
import { type LoadedFiles, loadFiles, type ParsedAnswer } from './load-files.js';
import { buildProgram } from './program.js';
import { readSpec } from './read-spec.js';
import { letValue } from './read-value.js';
import { inWords, valueDimension } from './value.js';

/** Like `checkSpec`, for callers that hold parsed files. Never throws on any text. */
export function checkParsed(
  entry: ParsedFile,
  read: (path: string) => ParsedAnswer,
  options: CheckOptions = {},
): CheckResult {
  const loaded = loadFiles(entry, read);
  const { files } = loaded;
  const statements = files.flatMap((file) => file.tree.statements);
  const texts = new Map(files.map((file) => [file.file, file.text]));
  const references: ReferenceLog = new Map();
  const base = makeContext(statements, texts, references, loaded);
  const spec = readSpec(base, entry.file);
  const variantProblems: Problem[] = [];
  const variants = readVariants(base, statements, loaded, options.maxVariants ?? limits.variants, variantProblems);
  const problems = [
    ...files.flatMap((file) => file.problems),
    ...loaded.problems,
    ...base.problems,
    ...variantProblems,
  ];
  return {
    spec: { ...spec, variants } satisfies BoothSpec,
    problems: inOrder(problems, files),
    files,
    symbols: { symbols: collectSymbols(statements, references) },
    values: base.values,
  };
}

function makeContext(
  statements: readonly Statement[],
  texts: ReadonlyMap<string, string>,
  references: ReferenceLog,
  loaded: LoadedFiles,
): CheckContext {
  const problems: Problem[] = [];
  const program = buildProgram(statements, problems);
  return {
    program,
    texts,
    problems,
    values: [],
    references,
    letValues: new Map(),
    broken: loaded.incomplete ? new Everything() : new Set(),
  };
}

/** While a used file is missing, any unknown name may be declared there: only the missing file is reported. */
class Everything extends Set<string> {
  override has(): boolean {
    return true;
  }
}

function readVariants(
  base: CheckContext,
  statements: readonly Statement[],
  loaded: LoadedFiles,
  most: number,
  problems: Problem[],
): Variant[] {
  const known = new Set(base.problems.map(keyOf));
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
    const spec = readSpec(ctx, base.program.statements[0]?.file ?? '');
    variants.push({ ...named, ...titleOf(statement), range: wholeOf(statement), spec: { ...spec, variants: [] } });
    for (const problem of [...own.problems, ...ctx.problems]) {
      if (known.has(keyOf(problem))) continue;
      problems.push(placed(problem, statement));
    }
    if ((statement.block?.statements.length ?? 0) === 0 && statement.complete)
      warn({ ...base, problems }, 'variant-empty', headerOf(statement), `variant ${named.name} changes nothing`);
  }
  return variants;
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

function keyOf(problem: Problem): string {
  return `${problem.id}\n${problem.range.file}\n${problem.range.from}\n${problem.range.to}\n${problem.message}`;
}

/** By file in the order of use, then by place; the same thing is never told twice. */
function inOrder(problems: readonly Problem[], files: readonly ParsedFile[]): readonly Problem[] {
  const rank = new Map(files.map((file, i) => [file.file, i]));
  const unique = [...new Map(problems.map((problem) => [keyOf(problem), problem])).values()];
  return unique.sort(
    (a, b) =>
      (rank.get(a.range.file) ?? 0) - (rank.get(b.range.file) ?? 0) ||
      a.range.from - b.range.from ||
      a.range.to - b.range.to,
  );
}
