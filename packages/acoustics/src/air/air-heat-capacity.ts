import type { Air } from './air-properties.js';
import { humidityRatio } from './humidity-ratio.js';

/**
 * Heat that warms a cubic metre of air by a kelvin at constant pressure, J/(m3 K).
 *
 * Equation: rho (1006 + 1860 x)/(1 + x), x the `humidityRatio`. Units: as of `Air`.
 * Source: specific heats of dry air and of water vapour, J/(kg K) (from memory). Valid: -20 to 50 degC.
 * Errors: none beyond those of `airProperties`.
 */
export function airHeatCapacity(air: Air): number {
  const vapour = humidityRatio(air);
  return (air.density * (1006 + 1860 * vapour)) / (1 + vapour);
}
