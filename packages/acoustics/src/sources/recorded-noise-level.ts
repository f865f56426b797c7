import { requireNumber } from '../errors/require-number.js';

/**
 * Level that noise reads in a recording whose gain is set by a voice, dBFS.
 *
 * Equation: L = L_set - (L_voice - L_noise), both levels at the capsule with the same weighting and filter.
 * Units: `voice` and `noise` dB re 20 uPa, `voiceSetTo` dBFS RMS; result dBFS RMS.
 * Source: linear recording chain (common practice). Valid: no compressor, gate or noise reduction.
 * Errors: ArgumentError for a level that is no number.
 */
export function recordedNoiseLevel({
  voice,
  noise,
  voiceSetTo,
}: {
  readonly voice: number;
  readonly noise: number;
  readonly voiceSetTo: number;
}): number {
  requireNumber('level of the voice', voice, { unit: 'dB' });
  requireNumber('level of the noise', noise, { unit: 'dB' });
  requireNumber('level that the voice is set to', voiceSetTo, { unit: 'dBFS' });
  return voiceSetTo - (voice - noise);
}
