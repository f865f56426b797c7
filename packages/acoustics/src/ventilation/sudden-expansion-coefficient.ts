import { requireNumber } from '../errors/require-number.js';

/**
 * Loss coefficient of a sudden widening, referred to the speed in the narrow duct.
 *
 * Equation: (1 - S_1/S_2)^2. Units: areas m2. Source: Borda and Carnot, a balance of momentum (from memory).
 * Valid: turbulent flow. Errors: ArgumentError for an area that can't be or a duct that doesn't widen.
 */
export function suddenExpansionCoefficient(narrow: number, wide: number): number {
  requireNumber('area of the narrow duct', narrow, { above: 0, unit: 'square metres' });
  requireNumber('area of the wide duct', wide, { atLeast: narrow });
  return (1 - narrow / wide) ** 2;
}
