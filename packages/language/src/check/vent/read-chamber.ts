import type { Chamber } from '../../model/vent-parts.js';
import type { Statement } from '../../syntax/tree.js';
import { type CheckContext, complain, wholeOf } from '../context.js';
import { millimetres } from '../millimetres.js';
import { numberIn } from '../read-value.js';
import { readBoxBoard } from './read-box-board.js';
import { readPorousLining } from './read-porous-lining.js';

/** A box on the way of the air; undefined when one of its sizes is wrong. */
export function readChamber(ctx: CheckContext, statement: Statement, vent: string, index: number): Chamber | undefined {
  const label = `${vent}: chamber${index === 0 ? '' : ` ${index + 1}`}`;
  const [width, depth, height] = ['width', 'depth', 'height'].map(
    (axis) =>
      numberIn(ctx, statement, axis, {
        dimension: 'length',
        noun: 'the size of a box in an air path',
        label: `${label} ${axis}`,
        fact: 'chamber',
        aboveZero: true,
        usual: { min: 0.05, max: 3, text: 'such boxes are 50 mm to 3 m long' },
      })?.sourced,
  );
  const board = readBoxBoard(ctx, statement, `${label}, board`, 'a box');
  const lining = readPorousLining(ctx, statement, `${label}, lined`, 'a box');
  if (!width || !depth || !height) return undefined;
  const narrow = [width, depth, height].reduce((least, side) => (side.value < least.value ? side : least));
  const thickness = lining?.thickness;
  if (thickness && 2 * thickness.value >= narrow.value) {
    complain(
      ctx,
      'lining-fills-chamber',
      thickness.range,
      `a lining of ${millimetres(thickness.value)} on every side leaves nothing of a box ${millimetres(narrow.value)} wide`,
      {
        hint: 'the size of a box is that before its lining',
        related: [{ range: narrow.range, message: 'the box is this wide' }],
      },
    );
    return undefined;
  }
  return { range: wholeOf(statement), size: { width, depth, height }, board, lining };
}
