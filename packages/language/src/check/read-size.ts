import type { Size2, Size3 } from '../model/build-up.js';
import type { Statement } from '../syntax/tree.js';
import { type BlockReader, factOf } from './block-reader.js';
import type { CheckContext } from './context.js';
import { type NumberRule, numberIn } from './read-value.js';

const SIZE_RULE: Omit<NumberRule, 'label' | 'fact' | 'noun'> = {
  dimension: 'length',
  aboveZero: true,
  usual: { min: 0.05, max: 30, text: 'sizes lie between 50 mm and 30 m' },
};

/** A room may be a hall; nothing else that has a size here is larger than this, in metres. */
const LARGEST = { max: 30, maxText: 'it must be smaller than 30 m' };
const LARGEST_ROOM = { max: 1000, maxText: 'it must be smaller than 1000 m' };

function side(ctx: CheckContext, statement: Statement, label: string, axis: string): ReturnType<typeof numberIn> {
  const keyword = statement.fact!.keyword;
  return numberIn(ctx, statement, axis, {
    ...SIZE_RULE,
    ...(keyword === 'room' ? LARGEST_ROOM : LARGEST),
    noun: `a ${axis}`,
    label: `${label}: ${keyword} ${axis}`,
    fact: keyword,
  });
}

export function readSize3(reader: BlockReader, keyword: string): Size3 | undefined {
  const statement = factOf(reader, keyword);
  if (!statement) return undefined;
  const [width, depth, height] = ['width', 'depth', 'height'].map((axis) =>
    side(reader.ctx, statement, reader.label, axis),
  );
  return width && depth && height && { width: width.sourced, depth: depth.sourced, height: height.sourced };
}

export function readSize2(reader: BlockReader, keyword: string): Size2 | undefined {
  const statement = factOf(reader, keyword);
  if (!statement) return undefined;
  const [width, height] = ['width', 'height'].map((axis) => side(reader.ctx, statement, reader.label, axis));
  return width && height && { width: width.sourced, height: height.sourced };
}
