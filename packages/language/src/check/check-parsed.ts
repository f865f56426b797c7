import { applyAllowances } from '../allow/apply-allowances.js';
import { readAllowances } from '../allow/read-allowances.js';
import { limits } from '../limits.js';
import type { BoothSpec } from '../model/booth-spec.js';
import type { Problem } from '../model/problem.js';
import { withSeverities } from '../problems/with-severities.js';
import { collectSymbols } from '../symbols/collect-symbols.js';
import { capped } from '../syntax/parse.js';
import type { ParsedFile } from '../syntax/parsed-file.js';
import type { CheckOptions, CheckResult } from './check-result.js';
import { isCatalogue, type ReferenceLog } from './context.js';
import { loadFiles, type ParsedAnswer } from './load-files.js';
import { makeContext } from './make-context.js';
import { problemKey } from './problem-key.js';
import { readMeasured } from './read-measured.js';
import { readSpec } from './read-spec.js';
import { affordableVariants, readVariants } from './read-variants.js';
import { unreadOf } from './unread-of.js';

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
  const measured = statements.flatMap((statement) =>
    statement.fact?.keyword === 'measured'
      ? (readMeasured(
          base,
          statement,
          spec.site,
          spec.booths.map(({ name }) => name),
        ) ?? [])
      : [],
  );
  const variantProblems: Problem[] = [];
  const most = Math.min(options.maxVariants ?? limits.variants, affordableVariants(statements));
  const ofFiles = [...files.flatMap((file) => file.problems), ...loaded.problems];
  const variants = readVariants({ base, statements, loaded, ofFiles, file: entry.file, most }, variantProblems);
  const problems = [...ofFiles, ...base.problems, ...variantProblems];
  const unread = unreadOf([...ofFiles, ...base.problems], statements);
  const comments = files.filter(({ file }) => !isCatalogue(file)).map(readAllowances);
  const { allowed, others, ...applied } = applyAllowances(
    problems,
    comments.flatMap(({ allowances }) => allowances),
  );
  const told = [...applied.problems, ...comments.flatMap((comment) => comment.problems)];
  return {
    spec: { ...spec, variants, unread, allowances: others, measured } satisfies BoothSpec,
    problems: inOrder(withSeverities(told, options.severities), files),
    allowed,
    files,
    symbols: { symbols: collectSymbols(statements, references) },
    values: base.values,
  };
}

/** By file in the order of use, then by place; the same thing is never told twice. */
function inOrder(problems: readonly Problem[], files: readonly ParsedFile[]): readonly Problem[] {
  const rank = new Map(files.map((file, i) => [file.file, i]));
  const unique = [...new Map(problems.map((problem) => [problemKey(problem), problem])).values()];
  unique.sort(
    (a, b) =>
      (rank.get(a.range.file) ?? 0) - (rank.get(b.range.file) ?? 0) ||
      a.range.from - b.range.from ||
      a.range.to - b.range.to,
  );
  return capped(unique, files[0]!);
}
