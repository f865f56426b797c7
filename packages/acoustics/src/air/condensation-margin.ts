import { requireNumber } from '../errors/require-number.js';
import type { Air } from './air-properties.js';
import { dewPoint } from './dew-point.js';

/**
 * How far a surface is above the temperature at which water condenses on it, K; below 0 it does.
 *
 * Equation: T_surface - `dewPoint`. Units: degC; result K. Source: definition.
 * Valid: as of `dewPoint`. Mould can grow well before water condenses: a surface whose own humidity stays above 80 % for days
 * is the usual criterion (common practice).
 * Errors: ArgumentError for a temperature that can't be or air without moisture, which never condenses.
 */
export function condensationMargin(air: Air, surface: number): number {
  requireNumber('surface temperature', surface, { unit: 'degC' });
  return surface - dewPoint(air);
}
