import type { Air } from '../air/air-properties.js';
import { requireNumber } from '../errors/require-number.js';
import { airViscosity } from '../openings/air-friction.js';
import { ductFrictionFactor } from './duct-friction-factor.js';
import { localPressureLoss } from './local-pressure-loss.js';

/**
 * Pressure lost in a straight duct, Pa.
 *
 * Equation: f (l/D) rho U^2/2, D = 4 S/P, U = Q/S. Units: area m2, perimeter m, length m, roughness m, flow m3/s.
 * Source: Darcy and Weisbach (from memory); `ductFrictionFactor`. Valid: fully developed flow.
 * Errors: ArgumentError for a quantity that can't be.
 */
export function ductFrictionPressure(
  duct: { readonly area: number; readonly perimeter: number; readonly length: number; readonly roughness: number },
  flow: number,
  air: Air,
): number {
  requireNumber('duct area', duct.area, { above: 0 });
  requireNumber('duct perimeter', duct.perimeter, { above: 0 });
  requireNumber('duct length', duct.length, { atLeast: 0 });
  requireNumber('airflow', flow, { atLeast: 0 });
  if (flow === 0) return 0;
  const diameter = (4 * duct.area) / duct.perimeter;
  const speed = flow / duct.area;
  const factor = ductFrictionFactor((air.density * speed * diameter) / airViscosity(air), duct.roughness / diameter);
  return ((factor * duct.length) / diameter) * localPressureLoss(1, speed, air);
}
