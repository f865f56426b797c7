import type { Air } from '../air/air-properties.js';
import { requireNumber } from '../errors/require-number.js';
import { levelOf } from '../levels/level-of.js';

/** A wide piece of duct between two narrow ones. */
export type ExpansionChamber = {
  /** Area of the chamber, m2. */
  readonly chamberArea: number;
  /** Area of the duct before and after it, m2. */
  readonly ductArea: number;
  /** Length of the chamber, m. */
  readonly length: number;
};

/**
 * Transmission loss of a simple expansion chamber at one frequency, dB.
 *
 * Equation: 10 lg(1 + ((m - 1/m)/2)^2 sin^2(k L)), m the ratio of the areas, k = 2 pi f/c; none where the chamber is a
 * multiple of half a wavelength long.
 * Units: Hz, m2, m; result dB. Source: plane waves in a chamber without lining (from memory; it follows from pressure and
 * flow being continuous at both ends).
 * Valid: below the first mode across the chamber, about 0.6 c over its diameter. It is the loss between endless
 * ducts: what is gained in a real path depends on what is before and after.
 * Errors: ArgumentError for a quantity that can't be.
 *
 * @example
 * ```ts
 * import { airProperties } from '@boothwright/acoustics/air';
 * import { expansionChamberLoss } from '@boothwright/acoustics/ventilation';
 *
 * const air = airProperties({ temperature: 20, relativeHumidity: 0.5 });
 * expansionChamberLoss(172, { chamberArea: 0.08, ductArea: 0.01, length: 0.5 }, air); // 12.2
 * ```
 */
export function expansionChamberLoss(
  hz: number,
  { chamberArea, ductArea, length }: ExpansionChamber,
  air: Air,
): number {
  requireNumber('frequency', hz, { above: 0, unit: 'Hz' });
  requireNumber('chamber area', chamberArea, { above: 0, unit: 'square metres' });
  requireNumber('duct area', ductArea, { above: 0, unit: 'square metres' });
  requireNumber('chamber length', length, { atLeast: 0, unit: 'metres' });
  const ratio = chamberArea / ductArea;
  const phase = (2 * Math.PI * hz * length) / air.soundSpeed;
  return levelOf(1 + ((ratio - 1 / ratio) / 2) ** 2 * Math.sin(phase) ** 2);
}
