import type { Statement } from '../syntax/tree.js';
import type { CheckContext } from './context.js';

/** A line of the site that could not be read may be its room; that is told there. */
export function mayHaveRoom({ program }: CheckContext): boolean {
  const couldBe = (line: Statement): boolean => !line.fact || line.fact.keyword === 'room';
  return program.statements.some(
    ({ fact, block }) =>
      fact?.keyword === 'site' && (block?.closed === false || (block?.statements ?? []).some(couldBe)),
  );
}
