import { type Air, ductBendLoss, linedRectangularDuctLoss } from '@boothwright/acoustics';
import type { Vent } from '@boothwright/language';
import { perBand } from '../../bands/grid.js';

export interface MazeLoss {
  /** dB by band */
  readonly loss: readonly number[];
  readonly extrapolated: boolean;
  readonly notes: readonly string[];
}

/**
 * Loss of a channel of boards that turns again and again: the sum of its lined legs and of its turns.
 *
 * Rule: (turns + 1) legs of a rectangular duct lined on all four sides, and as many mitred bends as turns, as wide as the
 * channel; a turn of less than 90 degrees counts in proportion, one of more like a right angle. Units: m, degrees; result dB.
 * Source: `linedRectangularDuctLoss`, `ductBendLoss`; the chain and the share of the angle are our own.
 * Valid: legs of some widths; turns closer than that act on each other, and the sum is then an upper bound.
 */
export function mazeLoss({ turns, leg, angle, channel, lining }: NonNullable<Vent['maze']>, air: Air): MazeLoss {
  const thickness = lining?.thickness?.value ?? 0;
  const [width, height] = [channel.width.value, channel.height.value];
  const legs =
    thickness > 0
      ? linedRectangularDuctLoss({ width, height, length: (turns.value + 1) * leg.value, lining: thickness })
      : undefined;
  const bend = ductBendLoss({ width, lined: thickness > 0, form: 'square' }, air);
  const share = Math.min(1, angle.value / 90);
  const close = leg.value < 2 * width;
  return {
    loss: perBand((band) => (legs?.loss[band] ?? 0) + turns.value * share * (bend.loss[band] as number)),
    extrapolated: close || (legs?.validity.extrapolated ?? false),
    notes: [
      ...(legs?.validity.notes ?? []),
      ...bend.validity.notes,
      ...(thickness > 0 ? ['the maze is taken as lined on all four sides of its channel'] : []),
      ...(close
        ? ['the turns of the maze stand closer than two widths, the sum of their losses is an upper bound']
        : []),
    ],
  };
}
