import type { Booth } from '../model/booth-spec.js';
import { type BlockReader, factOf } from './block-reader.js';
import { wholeOf } from './context.js';
import { numberIn } from './read-value.js';

/** `stands at X, Y` in the axes of the room; undefined when nothing is said or one of the two is wrong. */
export function readStandsAt(reader: BlockReader): Booth['standsAt'] {
  const { ctx, label } = reader;
  const statement = factOf(reader, 'stands');
  if (!statement) return undefined;
  const [x, y] = ['x', 'y'].map(
    (axis) =>
      numberIn(ctx, statement, axis, {
        dimension: 'length',
        noun: 'the place of the booth',
        label: `${label}: stands at, ${axis}`,
        fact: 'stands',
      })?.sourced,
  );
  return x && y && { range: wholeOf(statement), x, y };
}
