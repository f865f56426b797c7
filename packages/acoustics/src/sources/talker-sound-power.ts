import { requireNumber } from '../errors/require-number.js';

/**
 * Sound power of a talker from the levels 1 m in front of the lips, dB re 1 pW; unknown bands stay unknown.
 *
 * Equation: Lw = Lp + 10.8 dB. Units: dB.
 * Source: M. J. Crocker, Engineering Acoustics, 2021, Table 4.3 (as transcribed).
 * Valid: it treats the voice as alike in all directions (4 pi m2 would be 11.0 dB). The mouth aims high frequencies ahead,
 * so that there the power is below this. Errors: ArgumentError for a level that is no number.
 */
export function talkerSoundPower(levels: readonly (number | null)[]): (number | null)[] {
  return levels.map((level, band) => {
    if (level === null) return null;
    requireNumber(`speech level in band ${band + 1} of ${levels.length}`, level, { unit: 'decibels' });
    return level + 10.8;
  });
}
