import { requireNumber } from '../errors/require-number.js';

/**
 * Loss coefficient of a sudden narrowing, referred to the speed in the narrow duct.
 *
 * Equation: 0.5 (1 - S_2/S_1); with S_1 without end it is the flush inlet of `commonLossCoefficients`. Units: areas m2.
 * Source: I. E. Idelchik (from memory). Valid: turbulent flow, sharp edges.
 * Errors: ArgumentError for an area that can't be or a duct that doesn't narrow.
 */
export function suddenContractionCoefficient(wide: number, narrow: number): number {
  requireNumber('area of the narrow duct', narrow, { above: 0, unit: 'square metres' });
  requireNumber('area of the wide duct', wide, { atLeast: narrow });
  return 0.5 * (1 - narrow / wide);
}
