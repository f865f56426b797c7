import type { Booth } from '../../model/booth-spec.js';
import { type CheckContext, complain, warn } from '../context.js';
import { millimetres } from '../millimetres.js';
import { SLACK } from './slack.js';

/** A sill says how high a window sits in a wall: its head must stay below the roof. */
export function checkSills(ctx: CheckContext, { windows, inside }: Booth): void {
  for (const { name, face, sill, size } of windows) {
    if (!sill) continue;
    if (face === 'roof' || face === 'floor') {
      warn(ctx, 'sill-in-flat-face', sill.range, `\`${name}\` lies in the ${face}, which has no height for a sill`, {
        hint: 'leave `sill` out',
      });
      continue;
    }
    const head = sill.value + size.height.value;
    const { height } = inside;
    if (head <= height.value + SLACK || size.height.value > height.value + SLACK) continue;
    complain(
      ctx,
      'opening-beyond-face',
      sill.range,
      `\`${name}\` would reach ${millimetres(head)} above the floor, inside \`${face}\` is ${millimetres(height.value)} high`,
      {
        hint: `a sill of at most ${millimetres(height.value - size.height.value)} fits`,
        related: [{ range: height.range, message: 'the inside is this large' }],
      },
    );
  }
}
