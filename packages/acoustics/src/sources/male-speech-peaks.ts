import { thirdOctaveBands } from '../bands/bands.js';

/** Peaks of male speech, dB, thirds from 200 Hz to 5 kHz. Source: as in `maleSpeechPeaks`. */
const peaks = [67, 68, 69, 70, 68.5, 66.5, 65, 64, 62, 60.5, 59.5, 58, 56, 53, 51];
/** Index of 200 Hz on the working grid. */
const first = 6;

/** What speech peaks lie above the long-term level, dB. Source: as in `maleSpeechPeaks`. */
export const speechPeakRise = 12;

/**
 * Peaks of a male voice 1 m in front of the lips; `speechPeakRise` less is its long-term spectrum.
 *
 * Rule: the printed levels. Units: dB in the 21 thirds; those below 200 Hz are unknown (null).
 * Source: M. J. Crocker, Engineering Acoustics, 2021, Table 4.3, after ANSI (as transcribed).
 * Valid: the printed table names no effort. Its long-term levels are 0.8 to 5.3 dB above the normal effort of ANSI S3.5-1997.
 * Its printed octaves are not the sums of its thirds: 0.4 dB below at 250 Hz, 0.7 above at 500 Hz, 2.2 below at 2 kHz.
 * Errors: none.
 */
export function maleSpeechPeaks(): (number | null)[] {
  return thirdOctaveBands.map((_, band) => (band < first ? null : peaks[band - first]!));
}
