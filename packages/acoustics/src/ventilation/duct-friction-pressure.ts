import type { Air } from '../air/air-properties.js';
import { requireNumber } from '../errors/require-number.js';
import { airViscosity } from '../openings/air-friction.js';
import { ductFrictionFactor } from './duct-friction-factor.js';
import { localPressureLoss } from './local-pressure-loss.js';

/**
 * Pressure lost in a straight duct, Pa.
 *
 * Equation: f (l/D) rho U^2/2, D = 4 S/P, U = Q/S. Units: area m2, perimeter m, length m, roughness m, flow m3/s.
 * Source: Darcy and Weisbach (from memory); `ductFrictionFactor`. Valid: fully developed flow, roughness up to 0.05 of
 * the diameter.
 * Errors: ArgumentError for a quantity that can't be.
 */
export function ductFrictionPressure(
  duct: { readonly area: number; readonly perimeter: number; readonly length: number; readonly roughness: number },
  flow: number,
  air: Air,
): number {
  requireNumber('duct area', duct.area, { above: 0, unit: 'square metres' });
  requireNumber('duct perimeter', duct.perimeter, { above: 0 });
  requireNumber('duct length', duct.length, { atLeast: 0, unit: 'metres' });
  requireNumber('airflow', flow, { atLeast: 0, unit: 'cubic metres per second' });
  const diameter = (4 * duct.area) / duct.perimeter;
  requireNumber('duct roughness', duct.roughness, { atLeast: 0, atMost: 0.05 * diameter });
  const speed = flow / duct.area;
  const viscosity = airViscosity(air);
  const reynolds = (air.density * speed * diameter) / viscosity;
  // 64/Re put in, so that a vanishing flow leaves no quotient of two vanishing numbers.
  if (reynolds <= 2300) return (32 * viscosity * speed * duct.length) / diameter ** 2;
  const factor = ductFrictionFactor(reynolds, duct.roughness / diameter);
  return ((factor * duct.length) / diameter) * localPressureLoss(1, speed, air);
}
