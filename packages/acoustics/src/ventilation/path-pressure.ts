import type { Air } from '../air/air-properties.js';
import { ArgumentError } from '../errors/argument-error.js';
import { requireNumber } from '../errors/require-number.js';
import { ductFrictionPressure } from './duct-friction-pressure.js';
import { localPressureLoss } from './local-pressure-loss.js';

/** A straight duct, a fitting with a loss coefficient, or a device whose pressure loss is known at one airflow. */
export type PathElement =
  | {
      readonly kind: 'duct';
      /** m2, m, m, m */
      readonly area: number;
      readonly perimeter: number;
      readonly length: number;
      readonly roughness: number;
    }
  | {
      readonly kind: 'fitting';
      /** Loss coefficient, and area of the duct that it is referred to, m2. */
      readonly coefficient: number;
      readonly area: number;
    }
  | {
      readonly kind: 'device';
      /** Pressure lost, Pa, at an airflow, m3/s. */
      readonly pressure: number;
      readonly flow: number;
      /** How the pressure goes with the flow: 2 for a grille or a silencer, 1 for a dense filter. */
      readonly exponent: number;
    };

/**
 * Pressure lost along an air path whose elements are passed one after the other, Pa.
 *
 * Equation: sum of `ductFrictionPressure`, `localPressureLoss` at U = Q/S, and p (Q/Q_0)^n of devices.
 * Units: airflow m3/s; result Pa. Source: sum of total pressure losses (common practice); the system curve of
 * `fanOperatingPoint`. Valid: fittings apart by some widths; two close to each other lose more or less than their sum.
 * Errors: ArgumentError for a quantity that can't be or an element of no known kind.
 *
 * @example
 * ```ts
 * import { airProperties } from '@boothwright/acoustics/air';
 * import { commonLossCoefficients, pathPressure } from '@boothwright/acoustics/ventilation';
 *
 * const air = airProperties({ temperature: 20, relativeHumidity: 0.5 });
 * const area = 0.00785;
 * const path = [
 *   { kind: 'duct', area, perimeter: 0.314, length: 2, roughness: 1.5e-4 },
 *   { kind: 'fitting', area, coefficient: commonLossCoefficients.outlet },
 * ] as const;
 * pathPressure(path, 0.02, air); // 6.21
 * ```
 */
export function pathPressure(path: readonly PathElement[], flow: number, air: Air): number {
  requireNumber('airflow', flow, { atLeast: 0, unit: 'm3/s' });
  return path.reduce((sum, element) => sum + elementPressure(element, flow, air), 0);
}

function elementPressure(element: PathElement, flow: number, air: Air): number {
  switch (element.kind) {
    case 'duct':
      return ductFrictionPressure(element, flow, air);
    case 'fitting':
      requireNumber('area of the fitting', element.area, { above: 0, unit: 'square metres' });
      return localPressureLoss(element.coefficient, flow / element.area, air);
    case 'device':
      requireNumber('pressure lost in the device', element.pressure, { atLeast: 0, unit: 'Pa' });
      requireNumber('airflow of the device', element.flow, { above: 0, unit: 'm3/s' });
      requireNumber('exponent of the device', element.exponent, { atLeast: 1, atMost: 2 });
      return element.pressure * (flow / element.flow) ** element.exponent;
    default: {
      const { kind } = element as { kind: unknown };
      throw new ArgumentError('kind of the path element', `"${String(kind)}"`, 'duct, fitting or device');
    }
  }
}
