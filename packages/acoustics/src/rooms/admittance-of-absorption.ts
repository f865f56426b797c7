import { requireNumber } from '../errors/require-number.js';

/** Specific admittance at which a locally reacting wall of real admittance takes most of a diffuse field, and that share. */
const most = { admittance: 0.6379, absorption: 0.9512 };

/** Diffuse absorption of a wall of real specific admittance b: 8 b (1 + b / (1 + b) - 2 b ln(1 + 1 / b)). */
function absorptionOf(b: number): number {
  return b === 0 ? 0 : 8 * b * (1 + b / (1 + b) - 2 * b * Math.log1p(1 / b));
}

/**
 * Real specific admittance of a locally reacting wall that has a given absorption coefficient in a diffuse field.
 *
 * Equation: alpha = 8 b (1 + b / (1 + b) - 2 b ln(1 + 1 / b)), solved for the smaller b by bisection.
 * Units: dimensionless, rho c over the impedance. Coefficients above 0.9512, which no such wall reaches, give 0.6379.
 * Source: Paris' integral for a real admittance (common practice).
 * Valid: where nothing but a coefficient is known. The true wall also stores energy, which moves modes; of that this says
 * nothing.
 * Errors: ArgumentError for a coefficient below 0.
 */
export function admittanceOfAbsorption(absorption: number): number {
  requireNumber('absorption', absorption, { atLeast: 0 });
  if (absorption >= most.absorption) return most.admittance;
  let low = 0;
  let high = most.admittance;
  for (let round = 0; round < 50; round++) {
    const middle = (low + high) / 2;
    if (absorptionOf(middle) < absorption) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}
