import { fullShoutReading, fullShoutSpectrum, speechBasis, speechSpectrum } from '@boothwright/acoustics';
import type { Effort } from '@boothwright/language';
import type { ByBand } from '../result/result-document.js';
import type { VoiceEffort } from '../result/voice-result.js';

/** From the quietest to the loudest that is told. */
export const voiceEfforts: readonly VoiceEffort[] = ['casual', 'normal', 'raised', 'loud', 'shout', 'full-shout'];

/**
 * The effort that others must be spared: a shout counts as the full shout of a performer, because the standard's is the
 * mean of men and women who were asked to shout once.
 */
export function effortOutside(effort: Effort): VoiceEffort {
  return effort === 'shout' ? 'full-shout' : effort;
}

/** Levels 1 m in front of the lips, dB by band. */
export function effortSpectrum(effort: VoiceEffort): ByBand {
  return effort === 'full-shout' ? fullShoutSpectrum() : speechSpectrum(effort);
}

export function effortBasis(effort: VoiceEffort): string {
  return effort === 'full-shout'
    ? `full shout of ${fullShoutReading} dBA at 1 m (Pearsons, Bennett and Fidell 1977, men, from memory), shape ANSI S3.5-1997 Table 3`
    : speechBasis(effort).text;
}
