import type { Booth } from '../../model/booth-spec.js';
import { type CheckContext, warn } from '../context.js';

/** What a fan moves must come from somewhere and go somewhere. */
export function checkAirPaths(ctx: CheckContext, { vents }: Booth): void {
  const fans = vents.filter((vent) => vent.fan);
  const first = fans[0];
  if (!first) return;
  if (vents.length === 1) {
    warn(
      ctx,
      'air-has-no-way-out',
      // Not the fan: a variant that gives it another flow has the same complaint.
      first.nameRange,
      `the fan of \`${first.name}\` has no second vent to move its air through`,
      { hint: 'add a `vent` for the air to enter or leave' },
    );
    return;
  }
  const directions = new Set(vents.map(({ fan }) => fan?.direction?.value));
  if (directions.size > 1 || directions.has(undefined)) return;
  const isSupply = directions.has('supply');
  warn(
    ctx,
    'air-has-no-way-out',
    first.nameRange,
    `the fans of all ${vents.length} vents ${isSupply ? 'blow air in and none lets it out' : 'draw air out and none lets it in'}`,
    {
      hint: isSupply
        ? 'let one of them `exhaust`, or add a `vent` without a fan'
        : 'let one of them `supply`, or add a `vent` without a fan',
      related: fans.slice(1).map(({ name, nameRange }) => ({ range: nameRange, message: `\`${name}\` does the same` })),
    },
  );
}
