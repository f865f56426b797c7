import { ArgumentError } from '../errors/argument-error.js';
import { requirePositive } from './require-positive.js';

/**
 * Clarity, definition and centre time of an energy response that starts with the direct sound.
 *
 * Equation: C = 10 lg(E(0..t) / E(t..end)), D = E(0..t) / E, t_s = sum(t E) / E, with t = 0.05 s for speech (C50, D50) and
 * 0.08 s for music.
 * Units: energy per sample, sample rate Hz, early limit s; results dB, fraction, s. Clarity is infinite without late sound.
 * Source: ISO 3382-1 (from memory).
 * Errors: ArgumentError for a rate or limit that isn't above zero, or a silent record.
 */
export function clarity(
  energy: Float64Array,
  sampleRate: number,
  earlyLimit: number,
): { readonly clarity: number; readonly definition: number; readonly centreTime: number } {
  requirePositive('sample rate', sampleRate, 'Hz');
  requirePositive('early limit', earlyLimit, 'seconds');
  const limit = Math.round(earlyLimit * sampleRate);
  let early = 0;
  let late = 0;
  let moment = 0;
  for (let index = 0; index < energy.length; index++) {
    if (index < limit) early += energy[index]!;
    else late += energy[index]!;
    moment += (index / sampleRate) * energy[index]!;
  }
  const all = early + late;
  if (!(all > 0 && Number.isFinite(all))) throw new ArgumentError('energy of the record', all, 'a number above 0');
  return { clarity: 10 * Math.log10(early / late), definition: early / all, centreTime: moment / all };
}
