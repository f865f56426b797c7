import { octaveBands } from './bands.js';
import { requireBands } from './require-bands.js';

/**
 * Third-octave band levels from octave band levels, the energy shared equally by the three thirds.
 *
 * Equation: L_third = L_octave - 10 lg 3.
 * Units: dB; 7 octaves in, 21 thirds out; null (unknown) stays null in all three thirds.
 * Source: energy identity; the equal share is an assumption (common practice), as an octave says nothing of its inside.
 * Errors: ArgumentError for a wrong number of bands or a value that is no number.
 */
export function octaveLevelsToThirds(levels: readonly (number | null)[]): (number | null)[] {
  requireBands('octave band level', levels, [octaveBands.length], { unknown: true, silence: true });
  return levels.flatMap((level) => {
    const third = level === null ? null : level - 10 * Math.log10(3);
    return [third, third, third];
  });
}
