import { limits } from '../limits.js';
import type { SourceRange } from '../model/sourced.js';
import type { Statement } from '../syntax/tree.js';
import type { CheckContext, ReferenceLog } from './context.js';

interface Remembered<T> {
  readonly result: T;
  readonly values: CheckContext['values'];
  readonly references: readonly (readonly [string, ReadonlyMap<string, SourceRange>])[];
  /** True while every name in the declaration means what it meant. */
  readonly holds: (ctx: CheckContext) => boolean;
}

/**
 * Reads a declaration once for all checks in which it is the same object and its names mean the same. `holdsFor` gets the
 * references of a reading that found nothing wrong and answers when the reading still holds, or undefined when it is to
 * be read each time.
 */
export function rememberer<T>(
  read: (ctx: CheckContext, statement: Statement) => T,
  holdsFor: (references: ReferenceLog, ctx: CheckContext) => Remembered<T>['holds'] | undefined,
): (ctx: CheckContext, statement: Statement) => T {
  const known = new WeakMap<Statement, Remembered<T>>();
  return (ctx, statement) => {
    const found = known.get(statement);
    if (found?.holds(ctx)) {
      for (const value of found.values) ctx.values.push(value);
      addReferences(ctx, found.references);
      return found.result;
    }
    const own: CheckContext = { ...ctx, values: [], references: new Map() };
    const isQuiet = mayBeSilent(ctx) || !isComplete(statement);
    const before = ctx.problems.length;
    const result = read(own, statement);
    for (const value of own.values) ctx.values.push(value);
    addReferences(ctx, own.references);
    const holds = isQuiet || ctx.problems.length > before ? undefined : holdsFor(own.references, ctx);
    if (holds) known.set(statement, { result, values: own.values, references: [...own.references], holds });
    return result;
  };
}

/** True while something wrong may go without a word, so that silence does not mean that nothing was wrong. */
function mayBeSilent({ problems, broken }: CheckContext): boolean {
  return (
    broken.size > 0 ||
    broken.has('') ||
    problems.length >= limits.problems ||
    problems.some(({ id }) => id === 'catalogue-missing')
  );
}

function isComplete({ complete, block }: Statement): boolean {
  return complete && (block === undefined || (block.closed && block.statements.every(isComplete)));
}

function addReferences(
  ctx: CheckContext,
  references: Iterable<readonly [string, ReadonlyMap<string, SourceRange>]>,
): void {
  for (const [key, ranges] of references) {
    let all = ctx.references.get(key);
    if (!all) {
      all = new Map();
      ctx.references.set(key, all);
    }
    for (const [place, range] of ranges) all.set(place, range);
  }
}
