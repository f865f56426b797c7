import { thirdOctaveBands } from '../bands/bands.js';
import { ArgumentError } from '../errors/argument-error.js';
import { levelOf } from '../levels/level-of.js';
import { scaleToReading } from '../levels/scale-to-reading.js';

/** Vocal efforts that are tabulated. */
export type VocalEffort = 'casual' | 'normal' | 'raised' | 'loud' | 'shout';

/** Where a speech spectrum comes from, to be shown with it. */
export type SpeechBasis = { readonly kind: 'published' | 'from memory'; readonly text: string };

/**
 * Standard speech spectrum levels 1 m in front of the lips, dB per Hz, thirds from 160 Hz to 5 kHz.
 * Source: ANSI S3.5-1997 Table 3 (as transcribed; the printed page was not opened).
 */
const spectrumLevels = {
  normal: [32.41, 34.48, 34.75, 33.98, 34.59, 34.27, 32.06, 28.3, 25.01, 23.0, 20.15, 17.32, 13.18, 11.55, 9.33, 5.31],
  raised: [
    33.81, 33.92, 38.98, 38.57, 39.11, 40.15, 38.78, 36.37, 33.86, 31.89, 28.58, 25.32, 22.35, 20.15, 16.78, 11.47,
  ],
  loud: [35.29, 37.76, 41.55, 43.78, 43.4, 44.85, 45.55, 44.05, 42.16, 40.53, 37.7, 34.39, 30.98, 28.21, 25.41, 18.35],
  shout: [30.77, 36.65, 42.5, 46.51, 47.4, 49.24, 51.21, 51.44, 51.31, 49.63, 47.65, 44.32, 40.8, 38.13, 34.41, 28.24],
} as const;
/** Index of 160 Hz on the working grid. */
const first = 5;

/**
 * A-weighted level of casual speech at 1 m, dB. From memory: the male value of K. S. Pearsons, R. L. Bennett and
 * S. Fidell, Speech Levels in Various Noise Environments, EPA-600/1-77-025, 1977; not opened.
 */
export const casualSpeechReading = 52;

/** Says whether the spectrum of an effort was published, and where. */
export function speechBasis(effort: VocalEffort): SpeechBasis {
  return effort === 'casual'
    ? {
        kind: 'from memory',
        text: `shape of normal effort (ANSI S3.5-1997 Table 3) scaled to ${casualSpeechReading} dBA at 1 m (Pearsons, Bennett and Fidell 1977, male, from memory)`,
      }
    : { kind: 'published', text: 'ANSI S3.5-1997 Table 3, standard speech spectrum at 1 m, as transcribed' };
}

/**
 * Long-term speech spectrum 1 m in front of the lips in a free field, by vocal effort.
 *
 * Equation: band level = spectrum level + 10 lg(bandwidth). Casual effort, which the standard lacks, is normal effort
 * scaled to `casualSpeechReading`.
 * Units: dB, 21 thirds. The bands below 160 Hz are unknown (null), as the standard does not give them: a low male voice
 * does reach 100 Hz, and nothing is said of it here.
 * Source: ANSI S3.5-1997 Table 3 (as transcribed).
 * Valid: for an average of talkers; a performer at full shout can be 5 to 8 dB above it (from memory).
 *
 * @example
 * ```ts
 * import { speechSpectrum } from '@boothwright/acoustics/sources';
 *
 * const spectrum = speechSpectrum('normal');
 * // 50 Hz is unknown; 500 Hz.
 * spectrum[0]; // null
 * spectrum[10]; // 54.9
 * ```
 */
export function speechSpectrum(effort: VocalEffort): (number | null)[] {
  if (effort === 'casual') return scaleToReading(speechSpectrum('normal'), casualSpeechReading, 'A');
  const levels = spectrumLevels[effort];
  if (!levels) throw new ArgumentError('vocal effort', `"${effort}"`, 'casual, normal, raised, loud or shout');
  return thirdOctaveBands.map(({ lower, upper }, index) =>
    index < first ? null : levels[index - first]! + levelOf(upper - lower),
  );
}
