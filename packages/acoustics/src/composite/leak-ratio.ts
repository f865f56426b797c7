import { requireNumber } from '../errors/require-number.js';

/**
 * Open share of a shell, no unit: the area of its openings over its whole area.
 *
 * Equation: q = S_open/S. Units: m2. Source: W. Schirmer (ed.): Technischer Laermschutz, 2nd ed. (2006), 10.8.1 (as
 * transcribed). Errors: ArgumentError for areas that cannot be.
 */
export function leakRatio(openArea: number, totalArea: number): number {
  requireNumber('area of the shell', totalArea, { above: 0, unit: 'm2' });
  requireNumber('open area', openArea, { atLeast: 0, atMost: totalArea, unit: 'm2' });
  return openArea / totalArea;
}

/**
 * Transmission loss that a bare opening leaves a shell at most, dB; infinite without opening.
 *
 * Equation: R = -10 lg q. Source: C. Hopkins: Sound Insulation (2007), Eq. 4.92 (as transcribed). Valid for openings that
 * pass what falls on them; at resonance a small hole passes more.
 * Errors: ArgumentError for a ratio outside 0 .. 1.
 */
export function openAreaLimit(ratio: number): number {
  requireNumber('leak ratio', ratio, { atLeast: 0, atMost: 1 });
  return ratio === 0 ? Number.POSITIVE_INFINITY : 0 - 10 * Math.log10(ratio);
}
