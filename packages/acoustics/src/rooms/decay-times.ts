import type { DecayCurve } from './backward-integration.js';

/** A straight line fitted to a part of a decay. */
export type DecayFit = {
  /** Time of 60 dB at the fitted slope, s. */
  readonly time: number;
  /** Non-linearity 1000 (1 - r^2), in permille; below 10 counts as straight. */
  readonly nonLinearity: number;
};

/** Reverberation times of one decay over the usual ranges. */
export type DecayTimes = {
  /** Each is null where the curve does not reach its range. */
  readonly edt: DecayFit | null;
  readonly t20: DecayFit | null;
  readonly t30: DecayFit | null;
  /** 100 (T30 / T20 - 1), in percent; 0 to 5 counts as straight, above 10 as two slopes. */
  readonly curvature: number | null;
};

/**
 * Early decay time, T20 and T30 of a decay curve with the quality of each fit.
 *
 * Equation: straight line by least squares over 0 .. -10 dB (EDT), -5 .. -25 dB (T20), -5 .. -35 dB (T30); T = -60 over
 * its slope; xi = 1000 (1 - r^2), C = 100 (T30 / T20 - 1).
 * Units: dB and Hz in, s, permille and percent out.
 * Source: ISO 3382-1 and ISO 3382-2, annex on the non-linearity and the curvature (from memory).
 * Valid: for a curve that stays 10 dB above its noise over the range.
 */
export function decayTimes(curve: DecayCurve): DecayTimes {
  const edt = fitDecay(curve, 0, -10);
  const t20 = fitDecay(curve, -5, -25);
  const t30 = fitDecay(curve, -5, -35);
  const curvature = t20 === null || t30 === null ? null : 100 * (t30.time / t20.time - 1);
  return { edt, t20, t30, curvature };
}

function fitDecay({ level, sampleRate }: DecayCurve, from: number, to: number): DecayFit | null {
  // Samples before the direct sound lie at 0 dB and are no part of the decay.
  let first = 0;
  while (first < level.length && level[first]! >= from) first++;
  if (from === 0 && first > 0) first--;
  let end = first;
  while (end < level.length && level[end]! >= to) end++;
  if (end >= level.length || end - first < 3) return null;
  const n = end - first;
  const middle = (n - 1) / 2;
  let mean = 0;
  for (let index = first; index < end; index++) mean += level[index]! / n;
  let sxx = 0;
  let sxy = 0;
  let syy = 0;
  for (let index = first; index < end; index++) {
    const x = index - first - middle;
    const y = level[index]! - mean;
    sxx += x * x;
    sxy += x * y;
    syy += y * y;
  }
  if (!(sxy < 0)) return null;
  return { time: -60 / ((sxy / sxx) * sampleRate), nonLinearity: 1000 * (1 - (sxy * sxy) / (sxx * syy)) };
}
