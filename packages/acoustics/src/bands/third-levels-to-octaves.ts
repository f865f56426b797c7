import { sumLevels } from '../levels/sum-levels.js';
import { octaveBands, thirdOctaveBands } from './bands.js';
import { requireBands } from './require-bands.js';
import { thirdsOfOctave } from './thirds-of-octave.js';

/**
 * Octave band levels from third-octave band levels.
 *
 * Equation: L_octave = 10 lg of the sum of 10^(L/10) over the three thirds.
 * Units: dB; 21 thirds in, 7 octaves out; an octave is null (unknown) when any of its thirds is.
 * Source: energy identity.
 * Errors: ArgumentError for a wrong number of bands or a value that is no number.
 *
 * @example
 * ```ts
 * import { thirdLevelsToOctaves } from '@boothwright/acoustics/bands';
 *
 * thirdLevelsToOctaves(new Array(21).fill(60))[0]; // 64.8
 * ```
 */
export function thirdLevelsToOctaves(levels: readonly (number | null)[]): (number | null)[] {
  requireBands('third-octave band level', levels, [thirdOctaveBands.length], { unknown: true, silence: true });
  return octaveBands.map((_, octave) => {
    const thirds = thirdsOfOctave(octave).map((index) => levels[index]!);
    return thirds.some((level) => level === null) ? null : sumLevels(thirds as number[]);
  });
}
