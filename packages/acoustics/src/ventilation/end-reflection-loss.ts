import type { Air } from '../air/air-properties.js';
import { thirdOctaveBands } from '../bands/bands.js';
import { requireNumber } from '../errors/require-number.js';
import { requireOneOf } from '../errors/require-one-of.js';
import { levelOf } from '../levels/level-of.js';
import { asInsertionLoss, type InsertionLoss } from '../quantities/insertion-loss.js';
import type { DuctLoss, DuctOctaveLoss, DuctValidity } from './duct-loss.js';
import { exactDuctOctaves, validityOf } from './duct-tables.js';

/** The open end of a duct. */
export type DuctEnd = {
  /** Free area of the duct at its end, m2. */
  readonly area: number;
  /** `flush` in a wall or ceiling, or `free` in the open room. */
  readonly termination: 'flush' | 'free';
};

/**
 * Loss by reflection at the open end of a duct.
 *
 * Equation: 10 lg(1 + (a c/(pi f D))^1.88), D = sqrt(4 S/pi), a = 1 free and 0.8 flush.
 * Units: area m2; result dB in 21 thirds, at the exact mid-band frequencies.
 * Source: M. Long, Architectural Acoustics, 2nd ed., 2014, equations 14.14 to 14.16 (as transcribed); the octave table
 * of D. A. Bies, C. H. Hansen and C. Q. Howard, Engineering Noise Control, 5th ed., 2017, Table 8.14, is met within 1 dB.
 * Valid: for a straight, open end at least three diameters long, 150 mm across or wider (from memory). A grille, a
 * flexible last piece or a bend close to the end takes much of it away. Narrower ends carry a note; the formula then stays
 * below the low-frequency limits 20 lg(c/(pi f D)) of a free and 20 lg(c/(pi f D)) - 3 of a flush end.
 * Errors: ArgumentError for an area that can't be or a termination that is not known.
 */
export function endReflectionLoss(end: DuctEnd, air: Air): DuctLoss {
  const { loss, validity } = atFrequencies(
    end,
    thirdOctaveBands.map(({ exact }) => exact),
    air,
  );
  return { loss, validity };
}

/** The loss of `endReflectionLoss` at the centres of the 8 octaves 63 Hz to 8 kHz; equation, source and range as there. */
export function endReflectionOctaveLoss(end: DuctEnd, air: Air): DuctOctaveLoss {
  const { loss, validity } = atFrequencies(end, exactDuctOctaves, air);
  return { octaves: loss, validity };
}

function atFrequencies(
  { area, termination }: DuctEnd,
  frequencies: readonly number[],
  air: Air,
): { readonly loss: InsertionLoss; readonly validity: DuctValidity } {
  requireNumber('duct area', area, { above: 0, unit: 'square metres' });
  requireOneOf('termination of the duct', termination, ['flush', 'free']);
  const diameter = Math.sqrt((4 * area) / Math.PI);
  const factor = termination === 'free' ? 1 : 0.8;
  const notes = diameter < 0.149 ? ['duct end narrower than the 150 mm of the table, formula carried on'] : [];
  return {
    loss: asInsertionLoss(
      frequencies.map((hz) => levelOf(1 + ((factor * air.soundSpeed) / (Math.PI * hz * diameter)) ** 1.88)),
    ),
    validity: validityOf(notes, []),
  };
}
