import {
  type Air,
  ductBendLoss,
  endReflectionLoss,
  linedRectangularDuctLoss,
  linedRoundDuctLoss,
} from '@boothwright/acoustics';
import type { Vent } from '@boothwright/language';
import { perBand } from '../../bands/grid.js';
import { valuesOnGrid } from '../../bands/quantity-table.js';
import { ductArea } from './duct-area.js';

export interface DuctPathLoss {
  /** What the lined run, the bends and the end inside the booth take from sound that travels in the duct, dB. */
  readonly alongDuct: readonly number[];
  /** Loss by reflection at one open end, dB; part of `alongDuct`. */
  readonly endReflection: readonly number[];
  /** Bands in which the user's own insertion loss stands in `alongDuct`. */
  readonly stated: readonly boolean[];
}

/**
 * Loss of one air path in third-octave bands. A bare run counts nothing. A stated insertion loss replaces the computed
 * loss in the bands that it names; the others keep the computed one. Bends of rectangular ducts are mitred turns, those
 * of round ducts round bends.
 */
export function ductPathLoss(vent: Vent, air: Air): DuctPathLoss {
  const { duct } = vent;
  const lining = vent.lining?.thickness?.value ?? 0;
  const length = vent.run.value;
  const run =
    lining <= 0
      ? perBand(() => 0)
      : duct.kind === 'round'
        ? linedRoundDuctLoss({ diameter: duct.diameter.value, length, lining }).loss
        : linedRectangularDuctLoss({ width: duct.width.value, height: duct.height.value, length, lining }).loss;
  const bend = ductBendLoss(
    {
      width: duct.kind === 'round' ? duct.diameter.value : Math.max(duct.width.value, duct.height.value),
      lined: lining > 0,
      form: duct.kind === 'round' ? 'round' : 'square',
    },
    air,
  ).loss;
  const endReflection = endReflectionLoss({ area: ductArea(vent), termination: 'flush' }, air).loss;
  const stated = vent.insertionLoss === undefined ? perBand(() => null) : valuesOnGrid(vent.insertionLoss.value);
  return {
    alongDuct: perBand(
      (band) =>
        stated[band] ??
        (run[band] as number) + vent.bends.value * (bend[band] as number) + (endReflection[band] as number),
    ),
    endReflection,
    stated: stated.map((value) => value !== null),
  };
}
