import type { Booth } from '../../model/booth-spec.js';
import { type CheckContext, complain } from '../context.js';
import { millimetres } from '../millimetres.js';
import { faceSize } from './face-size.js';

/** A grille lies on the inner side of its face and is no larger. */
export function checkGrilles(ctx: CheckContext, booth: Booth): void {
  for (const { name, face, grille } of booth.vents) {
    if (!grille) continue;
    const clear = faceSize({ ...booth, outside: undefined }, face);
    const axis = (['width', 'height'] as const).find((side) => grille.size[side].value > clear[side].value);
    if (axis === undefined) continue;
    complain(
      ctx,
      'opening-larger-than-face',
      grille.size[axis].range,
      `the grille of \`${name}\` is ${millimetres(grille.size[axis].value)} in ${axis}, inside \`${face}\` is only ${millimetres(clear[axis].value)}`,
      { related: [{ range: clear[axis].range, message: 'the inside is this large' }] },
    );
  }
}
