import type { Panels } from '../model/inside-the-booth.js';
import { type BlockReader, factOf, readBlock } from './block-reader.js';
import { wholeOf } from './context.js';
import { factChoice, factNumber } from './read-value.js';

/** How the faces are cut; undefined when nothing is said or the width is wrong. */
export function readPanels(booth: BlockReader): Panels | undefined {
  const statement = factOf(booth, 'panels');
  if (!statement) return undefined;
  const reader = readBlock(booth.ctx, statement, 'panels');
  const width = factNumber(reader, 'width', {
    dimension: 'length',
    noun: 'the width of a panel',
    aboveZero: true,
    usual: { min: 0.2, max: 3.1, text: 'panels are 0.2 to 3.1 m wide' },
  });
  const split = factNumber(reader, 'split', {
    dimension: 'length',
    noun: 'the height of a joint',
    aboveZero: true,
  })?.sourced;
  const fastened = factChoice<'outside' | 'inside'>(reader, 'fastened');
  const roof = factChoice<'lift' | 'slide'>(reader, 'roof');
  return width && { range: wholeOf(statement), width: width.sourced, split, fastened, roof };
}
