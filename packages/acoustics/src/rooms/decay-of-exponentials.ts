import { requireNotNegative } from './require-positive.js';

/** A part of a decaying energy: `energy` times exp(-rate t), rate in 1/s. */
export type ExponentialDecay = { readonly energy: number; readonly rate: number };

/**
 * Times of 60 dB from parts of the decay of a sum of exponentials, after backward integration.
 *
 * Equation: E(t) = sum E_i / r_i exp(-r_i t); EDT from 0 to -10 dB times 6, T20 from -5 to -25 dB times 3, T30 from -5 to
 * -35 dB times 2; for one part each is 6 ln 10 / r.
 * Units: s. Null where a part never decays or nothing decays at all.
 * Source: derived; the ranges are those of ISO 3382 (from memory), end points in place of a fitted line.
 * Errors: ArgumentError for an energy or a rate below zero.
 */
export function decayOfExponentials(
  parts: readonly ExponentialDecay[],
): { readonly edt: number; readonly t20: number; readonly t30: number } | null {
  for (const { energy, rate } of parts) {
    requireNotNegative('energy of a decay', energy);
    requireNotNegative('rate of a decay', rate);
  }
  const live = parts.filter(({ energy }) => energy > 0);
  if (live.length === 0 || live.some(({ rate }) => rate <= 0)) return null;
  const whole = live.reduce((sum, { energy, rate }) => sum + energy / rate, 0);
  const slowest = Math.min(...live.map(({ rate }) => rate));
  const fastest = Math.max(...live.map(({ rate }) => rate));
  /** When the energy still to come has fallen by so many dB. */
  const timeOf = (fall: number) => {
    const target = whole * 10 ** (-fall / 10);
    let low = (Math.LN10 * fall) / 10 / fastest;
    let high = (Math.LN10 * fall) / 10 / slowest;
    let time = low;
    // Newton on the logarithm, which is convex: from the left it never overshoots.
    for (let round = 0; round < 60; round++) {
      let left = 0;
      let slope = 0;
      for (const { energy, rate } of live) {
        const now = Math.exp(-rate * time) * energy;
        left += now / rate;
        slope += now;
      }
      const step = (Math.log(left / target) * left) / slope;
      if (left > target) low = time;
      else high = time;
      const next = time + step;
      if (Math.abs(step) <= 1e-9 * high) return next;
      time = next >= low && next <= high ? next : (low + high) / 2;
    }
    return time;
  };
  const five = timeOf(5);
  return { edt: 6 * timeOf(10), t20: 3 * (timeOf(25) - five), t30: 2 * (timeOf(35) - five) };
}
