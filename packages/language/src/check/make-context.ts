import { limits } from '../limits.js';
import type { Problem } from '../model/problem.js';
import type { Statement } from '../syntax/tree.js';
import type { CheckContext, ReferenceLog } from './context.js';
import type { LoadedFiles } from './load-files.js';
import { buildProgram } from './program.js';

/** A fresh context for one reading of these statements: the base, or one variant. */
export function makeContext(
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
    purse: { lets: limits.letDepth, suggestions: limits.suggestions },
    broken: loaded.incomplete ? new Everything() : new Set(),
  };
}

/** While a used file is missing, any unknown name may be declared there: only the missing file is reported. */
class Everything extends Set<string> {
  override has(): boolean {
    return true;
  }
}
