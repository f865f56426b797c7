import type { Place } from '../model/inside-the-booth.js';
import type { Statement } from '../syntax/tree.js';
import type { CheckContext } from './context.js';
import { numberIn } from './read-value.js';

/** `at X, Y, Z` of a line, between structural faces; undefined when one of the three is wrong. */
export function readPlace(ctx: CheckContext, statement: Statement, noun: string, label: string): Place | undefined {
  const [x, y, z] = ['x', 'y', 'z'].map((axis) =>
    numberIn(ctx, statement, axis, {
      dimension: 'length',
      noun,
      label: `${label}: ${axis}`,
      fact: statement.fact!.keyword,
    }),
  );
  if (!x || !y || !z) return undefined;
  // A variant may have put one of the three elsewhere.
  const isTogether = x.sourced.range.file === z.sourced.range.file && x.sourced.range.from <= z.sourced.range.to;
  const range = isTogether ? { ...x.sourced.range, to: z.sourced.range.to } : x.sourced.range;
  return { range, x: x.sourced, y: y.sourced, z: z.sourced };
}
