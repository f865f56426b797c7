import type { Mounts } from '../model/inside-the-booth.js';
import { type BlockReader, factOf } from './block-reader.js';
import { wholeOf } from './context.js';
import { numberIn } from './read-value.js';

/** Springs under the booth; undefined when there are none or one of the two numbers is wrong. */
export function readMounts(reader: BlockReader): Mounts | undefined {
  const { ctx } = reader;
  const statement = factOf(reader, 'mounts');
  if (!statement) return undefined;
  const count = numberIn(ctx, statement, 'count', {
    dimension: 'count',
    noun: 'the number of mounts',
    label: 'mounts: count',
    fact: 'mounts',
    min: 1,
    whole: true,
    usual: { min: 3, max: 200, text: 'a booth stands on three mounts or more' },
  });
  const stiffness = numberIn(ctx, statement, 'stiffness', {
    dimension: 'stiffness',
    noun: 'the stiffness of a mount',
    label: 'mounts: stiffness',
    fact: 'mounts',
    aboveZero: true,
    usual: { min: 1e3, max: 1e8, text: 'mounts have 1 to 100 000 N/mm' },
  });
  return count && stiffness && { range: wholeOf(statement), count: count.sourced, stiffness: stiffness.sourced };
}
