import { requireNumber } from '../errors/require-number.js';

/**
 * Motion that springs pass on to what stands on them, over that of a rigid floor, dB; negative means less.
 *
 * Equation: 10 lg[(1 + eta^2) / ((1 - (f/f0)^2)^2 + eta^2)], eta the loss factor of the springs.
 * Units: `hz` and `natural` Hz, `lossFactor` none; result dB.
 * Source: one degree of freedom with structural damping (common practice).
 * Valid: on a rigid floor and below the resonances of the mass itself. It gains above 1.41 times the natural frequency;
 * at the natural frequency it is worse than without. Errors: ArgumentError for a quantity that can't be.
 */
export function mountTransmissibility(hz: number, natural: number, lossFactor: number): number {
  requireNumber('frequency', hz, { above: 0, unit: 'Hz' });
  requireNumber('natural frequency of the mounts', natural, { above: 0, unit: 'Hz' });
  requireNumber('loss factor of the mounts', lossFactor, { above: 0 });
  const stretch = (1 - (hz / natural) ** 2) ** 2;
  return 10 * Math.log10((1 + lossFactor ** 2) / (stretch + lossFactor ** 2));
}
