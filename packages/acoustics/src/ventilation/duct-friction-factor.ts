import { requireNumber } from '../errors/require-number.js';

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
