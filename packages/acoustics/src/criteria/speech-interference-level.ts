import { requireBands } from '../bands/require-bands.js';
import { octavesByCount } from './octaves-by-count.js';

/**
 * Speech interference level of four octaves (SIL).
 *
 * Equation: the arithmetic mean of the levels at 500 Hz, 1, 2 and 4 kHz.
 * Units: octave band levels in dB: 7 bands from 63 Hz to 4 kHz, or 8, 9 or 10 bands up to 8 kHz from 63, 31.5 or 16 Hz.
 * Source: ANSI/ASA S12.2-2019 clause 3.2 (as transcribed; the printed page was not opened).
 * Errors: ArgumentError for a wrong number of bands or a value that is no number.
 */
export function speechInterferenceLevel(octaveLevels: readonly number[]): number {
  requireBands('octave band level', octaveLevels, [7, 8, 9, 10], { silence: true });
  const first = octavesByCount(octaveLevels.length).indexOf(500);
  return octaveLevels.slice(first, first + 4).reduce((sum, level) => sum + level, 0) / 4;
}
