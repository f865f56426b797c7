import type { Air } from '../air/air-properties.js';
import { requireNumber } from '../errors/require-number.js';
import { requirePositive } from './require-positive.js';

/**
 * Comb that one reflection makes of the direct sound.
 *
 * Equation: peak 20 lg(1 + g), dip 20 lg(1 - g), g = 10^(level / 20); first dip at c / (2 D), first peak above it at
 * c / D, spacing c / D.
 * Units: level of the reflection re the direct sound dB, up to 0; path difference D m; results dB re the direct sound
 * alone, Hz. A reflection as strong as the direct sound has a dip of minus infinity.
 * Source: derived, two coherent sounds of equal sign. Valid for a reflection that keeps its sign and strength over
 * frequency, as of a hard wall.
 * Errors: ArgumentError for a level above 0 or a path difference that isn't above zero.
 */
export function combRipple(
  level: number,
  pathDifference: number,
  air: Air,
): { readonly peak: number; readonly dip: number; readonly firstDipHz: number; readonly spacingHz: number } {
  if (level !== Number.NEGATIVE_INFINITY) requireNumber('level of the reflection', level, { atMost: 0, unit: 'dB' });
  requirePositive('path difference', pathDifference, 'metres');
  const share = 10 ** (level / 20);
  const spacingHz = air.soundSpeed / pathDifference;
  return {
    peak: 20 * Math.log10(1 + share),
    dip: 20 * Math.log10(1 - share),
    firstDipHz: spacingHz / 2,
    spacingHz,
  };
}
