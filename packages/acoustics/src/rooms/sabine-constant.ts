import type { Air } from '../air/air-properties.js';

/**
 * The constant of Sabine's equation, s/m.
 *
 * Equation: k = 24 ln 10 / c, from the mean free path 4V/S of a diffuse field and a decay by 60 dB.
 * Units: c in m/s; result s/m: 0.1611 at 343 m/s, where handbooks print 0.161 or 0.16.
 * Source: derived.
 */
export function sabineConstant(air: Pick<Air, 'soundSpeed'>): number {
  return (24 * Math.LN10) / air.soundSpeed;
}
