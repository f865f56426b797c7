import type { Air } from '../air/air-properties.js';
import { requireNumber } from '../errors/require-number.js';
import { airViscosity } from '../openings/air-friction.js';

/**
 * Friction factor (Darcy) of a duct.
 *
 * Equation: 64/Re below Re 2300; above 4000 Colebrook, 1/sqrt(f) = -2 lg(e/(3.7 D) + 2.51/(Re sqrt(f))), by iteration;
 * between, linear in Re. Units: none; roughness over diameter, Reynolds number.
 * Source: Hagen-Poiseuille and Colebrook (from memory); the bridge between them is our own choice.
 * Valid: roughness up to 0.05 of the diameter. Errors: ArgumentError for a quantity that can't be.
 */
export function ductFrictionFactor(reynolds: number, relativeRoughness: number): number {
  requireNumber('Reynolds number', reynolds, { above: 0 });
  requireNumber('roughness over diameter', relativeRoughness, { atLeast: 0, atMost: 0.05 });
  if (reynolds <= 2300) return 64 / reynolds;
  if (reynolds >= 4000) return colebrook(reynolds, relativeRoughness);
  const part = (reynolds - 2300) / 1700;
  return (1 - part) * (64 / 2300) + part * colebrook(4000, relativeRoughness);
}

function colebrook(reynolds: number, relativeRoughness: number): number {
  // x = 1/sqrt(f); the map contracts strongly, so that twenty steps reach the last digit.
  let x = 7;
  for (let step = 0; step < 20; step++) x = -2 * Math.log10(relativeRoughness / 3.7 + (2.51 * x) / reynolds);
  return 1 / (x * x);
}

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

/**
 * Pressure lost at a fitting, Pa: K rho U^2/2. Units: K none, air speed U m/s.
 * Source: definition of the loss coefficient K (common practice). Errors: ArgumentError for a quantity that can't be.
 */
export function localPressureLoss(coefficient: number, speed: number, air: Air): number {
  requireNumber('loss coefficient', coefficient, { atLeast: 0 });
  requireNumber('air speed', speed, { atLeast: 0 });
  return (coefficient * air.density * speed ** 2) / 2;
}
