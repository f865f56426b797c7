import type { Maze } from '../../model/vent-parts.js';
import { type BlockReader, factOf } from '../block-reader.js';
import { fallback, headerOf, warn, wholeOf } from '../context.js';
import { millimetres } from '../millimetres.js';
import { numberIn } from '../read-value.js';
import { readBoxBoard } from './read-box-board.js';
import { readPorousLining } from './read-porous-lining.js';

/** Boards that turn the air; undefined when one of its sizes is wrong. */
export function readMaze(reader: BlockReader): Maze | undefined {
  const { ctx } = reader;
  const statement = factOf(reader, 'maze');
  if (!statement) return undefined;
  const label = `${reader.label}: maze`;
  const turns = numberIn(ctx, statement, 'turns', {
    dimension: 'count',
    noun: 'the number of turns',
    label: `${label} turns`,
    fact: 'maze',
    min: 1,
    whole: true,
    usual: { min: 1, max: 30, text: 'mazes turn the air up to thirty times' },
  });
  const length = (slot: string, noun: string, usual: { min: number; max: number; text: string }) =>
    numberIn(ctx, statement, slot, {
      dimension: 'length',
      noun,
      label: `${label} ${slot}`,
      fact: 'maze',
      aboveZero: true,
      usual,
    });
  const leg = length('leg', 'the leg of a maze', { min: 0.03, max: 3, text: 'legs are 30 mm to 3 m long' });
  const channel = { min: 0.01, max: 1, text: 'channels are 10 mm to 1 m wide' };
  const width = length('width', 'the channel of a maze', channel);
  const height = length('height', 'the channel of a maze', channel);
  const angle =
    numberIn(ctx, statement, 'angle', {
      dimension: 'angle',
      noun: 'the angle of a turn',
      label: `${label} angle`,
      fact: 'maze',
      aboveZero: true,
      max: 180,
      maxText: 'a turn of 180 deg leads straight back',
    })?.sourced ?? fallback<number>(ctx, 'maze-angle', `${label} angle`, 'angle', headerOf(statement));
  const board = readBoxBoard(ctx, statement, `${label}, board`, 'a maze');
  const lining = readPorousLining(ctx, statement, `${label}, lined`, 'a maze');
  if (!turns || !leg || !width || !height) return undefined;
  const narrow = Math.min(width.sourced.value, height.sourced.value);
  if (leg.sourced.value < narrow)
    warn(
      ctx,
      'maze-leg-short',
      leg.sourced.range,
      `a leg of ${millimetres(leg.sourced.value)} is shorter than the channel of ${millimetres(narrow)} is wide, so the air would not be turned`,
      { hint: 'the leg is the way from turn to turn along the middle of the channel' },
    );
  return {
    range: wholeOf(statement),
    turns: turns.sourced,
    leg: leg.sourced,
    angle,
    channel: { width: width.sourced, height: height.sourced },
    board,
    lining,
  };
}
