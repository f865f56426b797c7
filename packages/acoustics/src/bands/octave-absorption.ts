import { octaveBands, thirdOctaveBands } from './bands.js';
import { requireBands } from './require-bands.js';
import { thirdsOfOctave } from './thirds-of-octave.js';

/**
 * Absorption coefficients in octaves from thirds.
 *
 * Equation: alpha_octave = the arithmetic mean over the three thirds.
 * Units: dimensionless; 21 thirds in, 7 octaves out. Not rounded; `practicalAbsorption` rounds as ISO 11654 asks.
 * Source: common practice, and ISO 11654:1997 clause 4.1 (as transcribed).
 * Errors: ArgumentError for a wrong number of bands or a value that is no number.
 */
export function octaveAbsorption(absorption: readonly number[]): number[] {
  requireBands('absorption coefficient', absorption, [thirdOctaveBands.length], {});
  return octaveBands.map((_, octave) => {
    const [low, middle, high] = thirdsOfOctave(octave).map((index) => absorption[index]!);
    return (low! + middle! + high!) / 3;
  });
}
