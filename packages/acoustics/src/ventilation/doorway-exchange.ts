import { requireNumber } from '../errors/require-number.js';

const gravity = 9.81;

/**
 * Air that warm and cool rooms exchange through an open doorway between them, m3/s each way.
 *
 * Equation: Q = (C_d/3) W H sqrt(g H dT/T): Bernoulli's speed from the neutral height at the middle, integrated over half the
 * opening. Units: width W and height H m, difference dT K, mean temperature T degC, C_d none.
 * Source: W. G. Brown and K. R. Solvason, Int. J. Heat Mass Transfer 5, 1962 (from memory; the integral is done here).
 * Valid: an opening in a wall, no wind and nobody walking through; C_d of `doorwayDischargeCoefficient`, programs of building
 * energy take 0.65 to 0.78.
 * Errors: ArgumentError for a quantity that can't be.
 *
 * @example
 * ```ts
 * import { doorwayExchange } from '@boothwright/acoustics/ventilation';
 *
 * doorwayExchange({ width: 0.66, height: 1.9, difference: 1, temperature: 20, dischargeCoefficient: 0.6 }); // 0.0632
 * ```
 */
export function doorwayExchange({
  width,
  height,
  difference,
  temperature,
  dischargeCoefficient,
}: {
  readonly width: number;
  readonly height: number;
  readonly difference: number;
  readonly temperature: number;
  readonly dischargeCoefficient: number;
}): number {
  requireNumber('width of the doorway', width, { above: 0, unit: 'metres' });
  requireNumber('height of the doorway', height, { above: 0, unit: 'metres' });
  requireNumber('difference of temperature', difference, { atLeast: 0, unit: 'kelvins' });
  requireNumber('temperature', temperature, { atLeast: -70, atMost: 100, unit: 'degC' });
  requireNumber('discharge coefficient', dischargeCoefficient, { above: 0, atMost: 1 });
  return (
    (dischargeCoefficient / 3) * width * height * Math.sqrt((gravity * height * difference) / (temperature + 273.15))
  );
}
