import type { Vent } from '../../model/booth-spec.js';
import type { Sourced } from '../../model/sourced.js';
import { type CheckContext, warn } from '../context.js';

/** Boxes that are narrower than the duct they should widen. */
export function checkAirWay(ctx: CheckContext, { duct, chambers }: Vent): void {
  const ducts = duct.kind === 'round' ? (Math.PI / 4) * duct.diameter.value ** 2 : duct.width.value * duct.height.value;
  for (const { size, lining } of chambers) {
    const sides = [size.width, size.depth, size.height].sort((a, b) => b.value - a.value);
    const [, wide, narrow] = sides as [Sourced<number>, Sourced<number>, Sourced<number>];
    const lined = 2 * (lining?.thickness?.value ?? 0);
    const clear = (wide.value - lined) * (narrow.value - lined);
    if (clear >= ducts) continue;
    warn(
      ctx,
      'chamber-narrower-than-duct',
      narrow.range,
      `the box leaves the air ${squareCentimetres(clear)}, less than the ${squareCentimetres(ducts)} of the duct`,
      { hint: 'a box takes off sound by being wider than its duct' },
    );
  }
}

function squareCentimetres(area: number): string {
  return `${Math.round(area * 1e4)} cm2`;
}
