import { ArgumentError } from '../errors/argument-error.js';
import { requirePositive } from './require-positive.js';

/** A decay curve as integrated from an impulse response. */
export type DecayCurve = {
  /** Level of the energy still to come, dB re the whole; one value per sample, up to the truncation. */
  readonly level: Float64Array;
  readonly sampleRate: number;
  /** Sample at which the integration starts, where the decay meets the noise; the length of the record without noise. */
  readonly truncatedAt: number;
  /** Energy per sample of the noise found; zero where none was asked for. */
  readonly noise: number;
};

/** Share of the record, at its end, from which the noise is taken (common practice). */
const noiseShare = 0.1;

/**
 * Decay curve by backward integration of an energy response.
 *
 * Equation: E(t) = integral from t to t1 of p^2 + C, L = 10 lg(E / E(0)). With `'compensate'` the noise is the mean of the
 * last tenth; t1 is where the decay, fitted over the 20 dB that end 10 dB above the noise, meets the noise; and
 * C = p_n^2 / b, the energy of that exponential decay (b per sample) from t1 to infinity. With `'none'` all of the record
 * is integrated and C = 0.
 * Units: energy per sample (a squared pressure, or `imageEchogram`), sample rate Hz; result dB.
 * Source: M. R. Schroeder, JASA 37, 1965; truncation and compensation after ISO 3382-1 (from memory).
 * Valid: for a record from the direct sound on, or with silence before it. A record that ends above its noise loses
 * level towards the end; keep the evaluated range 10 dB above the noise.
 * Errors: ArgumentError for a record that is empty or silent, a negative energy, or, when compensating, a decay of less
 * than 25 dB above the noise.
 */
export function backwardIntegration(
  energy: Float64Array,
  sampleRate: number,
  noiseTreatment: 'none' | 'compensate',
): DecayCurve {
  requirePositive('sample rate', sampleRate, 'Hz');
  let total = 0;
  for (let index = 0; index < energy.length; index++) {
    if (!(energy[index]! >= 0)) {
      throw new ArgumentError(`energy of sample ${index + 1}`, energy[index], 'a number of 0 or more');
    }
    total += energy[index]!;
  }
  if (!(total > 0 && Number.isFinite(total)))
    throw new ArgumentError('energy of the record', total, 'a number above 0');
  const knee = noiseTreatment === 'none' ? { at: energy.length, rest: 0, noise: 0 } : findKnee(energy);
  const level = new Float64Array(knee.at);
  let left = knee.rest;
  for (let index = knee.at - 1; index >= 0; index--) {
    left += energy[index]!;
    level[index] = left;
  }
  for (let index = 0; index < level.length; index++) level[index] = 10 * Math.log10(level[index]! / left);
  return { level, sampleRate, truncatedAt: knee.at, noise: knee.noise };
}

/** Sample where the fitted decay meets the noise, and the energy that the decay would still have held from there. */
function findKnee(energy: Float64Array): { at: number; rest: number; noise: number } {
  const tail = Math.max(1, Math.floor(noiseShare * energy.length));
  let noise = 0;
  for (let index = energy.length - tail; index < energy.length; index++) noise += energy[index]! / tail;
  if (noise === 0) return { at: energy.length, rest: 0, noise };
  // Means over a few hundred blocks are smooth enough to compare with the noise.
  const block = Math.max(1, Math.floor(energy.length / 400));
  const levels: number[] = [];
  for (let start = 0; start + block <= energy.length; start += block) {
    let sum = 0;
    for (let index = start; index < start + block; index++) sum += energy[index]!;
    levels.push(10 * Math.log10(sum / block / noise));
  }
  const peak = levels.indexOf(Math.max(...levels));
  if (levels[peak]! < 35) {
    throw new ArgumentError('level of the response above its noise', levels[peak], 'a number of dB of 35 or more');
  }
  const end = levels.findIndex((value, index) => index > peak && value < 10);
  let begin = end;
  while (begin > peak && levels[begin - 1]! < 30) begin--;
  if (end < 0 || end - begin < 3) {
    throw new ArgumentError('blocks between 30 and 10 dB above the noise', Math.max(0, end - begin), '3 or more');
  }
  let n = 0;
  let sx = 0;
  let sy = 0;
  let sxx = 0;
  let sxy = 0;
  for (let index = begin; index < end; index++) {
    const x = (index + 0.5) * block;
    // The noise lies under the decay as well; without it the slope would come out flat.
    const y = 10 * Math.log10(Math.max(10 ** (levels[index]! / 10) - 1, 1e-3));
    n++;
    sx += x;
    sy += y;
    sxx += x * x;
    sxy += x * y;
  }
  const slope = (n * sxy - sx * sy) / (n * sxx - sx * sx);
  if (!(slope < 0)) throw new ArgumentError('slope of the decay', slope, 'a falling one');
  const at = Math.min(energy.length, Math.max(1, Math.round((sx * slope - sy) / n / slope)));
  // What is cut holds decay and noise; what is kept holds noise too, which this does not subtract.
  return { at, rest: noise / ((-slope * Math.LN10) / 10), noise };
}
