import type { Band } from '../bands/bands.js';
import { ArgumentError } from '../errors/argument-error.js';

/** Sample frequencies per third-octave band; the tests show what more of them would change. */
export const defaultSamplesPerBand = 8;

/** Those of each band by their count: every curve asks for them anew. */
const known = new WeakMap<Band, Map<number, readonly number[]>>();

/**
 * Frequencies inside a band at which a quantity is averaged, Hz: the middles of `count` steps of equal ratio, because a
 * band of noise with equal energy per ratio is what a measurement hears.
 * Errors: ArgumentError when `count` is not a whole number above 0.
 */
export function bandSamples(band: Band, count: number): readonly number[] {
  if (!(Number.isInteger(count) && count > 0)) {
    throw new ArgumentError('number of samples per band', count, 'a whole number above 0');
  }
  const byCount = known.get(band) ?? new Map<number, readonly number[]>();
  known.set(band, byCount);
  let samples = byCount.get(count);
  if (samples === undefined) {
    const ratio = band.upper / band.lower;
    samples = Array.from({ length: count }, (_, i) => band.lower * ratio ** ((i + 0.5) / count));
    byCount.set(count, samples);
  }
  return samples;
}
