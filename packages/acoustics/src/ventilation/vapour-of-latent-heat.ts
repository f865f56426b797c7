import { requireNumber } from '../errors/require-number.js';

/**
 * Water vapour that goes with latent heat, kg/s.
 *
 * Equation: P/(2.501e6 - 2361 T). Units: P W, T the temperature of the water that evaporates, degC (about 34 for skin).
 * Source: heat of vaporisation of water, linear in temperature (from memory). Valid: 0 to 60 degC.
 * Errors: ArgumentError for a quantity that can't be.
 */
export function vapourOfLatentHeat(latent: number, temperature: number): number {
  requireNumber('latent heat', latent, { atLeast: 0, unit: 'watts' });
  requireNumber('temperature of the water', temperature, { atLeast: 0, atMost: 60, unit: 'degC' });
  return latent / (2.501e6 - 2361 * temperature);
}
