import {
  type Air,
  type DuctLoss,
  ductBendLoss,
  endReflectionLoss,
  largestLinedDuctLoss,
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
  /** The same without the reflection at the end: lined run and bends, or what the user states. */
  readonly attenuation: readonly number[];
  /** Loss by reflection at one open end, dB; part of `alongDuct`. */
  readonly endReflection: readonly number[];
  /** Bands in which the user's own insertion loss stands in `alongDuct`. */
  readonly stated: readonly boolean[];
  /** True when an input lies outside what the sources of the computed losses cover. */
  readonly extrapolated: boolean;
  /** What the sources of the computed losses do not cover, and what was done about it. */
  readonly notes: readonly string[];
}

/**
 * Loss of one air path in third-octave bands. A bare run counts nothing. The computed loss of the whole path is held at
 * the 40 dB that the source of lined ducts grants: beyond it sound goes round, through walls of ducts. A stated insertion loss replaces the computed
 * loss in the bands that it names; the others keep the computed one. Bends of rectangular ducts are mitred turns, those
 * of round ducts round bends.
 */
export function ductPathLoss(vent: Vent, air: Air): DuctPathLoss {
  const { duct } = vent;
  const lining = vent.lining?.thickness?.value ?? 0;
  const length = vent.run.value;
  const run: DuctLoss | undefined =
    lining <= 0
      ? undefined
      : duct.kind === 'round'
        ? linedRoundDuctLoss({ diameter: duct.diameter.value, length, lining })
        : linedRectangularDuctLoss({ width: duct.width.value, height: duct.height.value, length, lining });
  const bend = ductBendLoss(
    {
      width: duct.kind === 'round' ? duct.diameter.value : Math.max(duct.width.value, duct.height.value),
      lined: lining > 0,
      form: duct.kind === 'round' ? 'round' : 'square',
    },
    air,
  );
  const bends = vent.bends.value;
  const end = endReflectionLoss({ area: ductArea(vent), termination: 'flush' }, air);
  const endReflection = end.loss;
  const stated = vent.insertionLoss === undefined ? perBand(() => null) : valuesOnGrid(vent.insertionLoss.value);
  const computed = perBand((band) => (run?.loss[band] ?? 0) + bends * (bend.loss[band] as number));
  const summed = perBand((band) => (computed[band] as number) + (endReflection[band] as number));
  const held = summed.some((loss, band) => stated[band] === null && loss > largestLinedDuctLoss);
  const used = [...(run === undefined ? [] : [run]), ...(bends > 0 ? [bend] : []), end].map(({ validity }) => validity);
  const anyComputed = stated.some((value) => value === null);
  return {
    alongDuct: perBand((band) => stated[band] ?? Math.min(summed[band] as number, largestLinedDuctLoss)),
    attenuation: perBand((band) => stated[band] ?? Math.min(computed[band] as number, largestLinedDuctLoss)),
    endReflection,
    stated: stated.map((value) => value !== null),
    extrapolated: anyComputed && used.some(({ extrapolated }) => extrapolated),
    notes: anyComputed
      ? [
          ...new Set([
            ...used.flatMap(({ notes }) => notes),
            ...(held ? [`loss held at ${largestLinedDuctLoss} dB: beyond it sound goes round the duct`] : []),
          ]),
        ]
      : [],
  };
}
