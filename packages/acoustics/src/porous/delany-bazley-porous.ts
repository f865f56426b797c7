import type { Air } from '../air/air-properties.js';
import { requireNumber } from '../errors/require-number.js';
import type { PorousMedium } from './porous-medium.js';

/**
 * Fibrous material by the regression of Delany and Bazley.
 *
 * Equations, with X = rho f/sigma: Zc = rho c (1 + 0.0571 X^-0.754 - j 0.087 X^-0.732),
 * k = (omega/c)(1 + 0.0978 X^-0.700 - j 0.189 X^-0.595); sigma in Pa s/m2, f in Hz, rho in kg/m3.
 * Source: M.E. Delany, E.N. Bazley (1970) as given in C. Hopkins: Sound Insulation (2007), Eqs. 1.171-1.172 (as
 * transcribed). Valid 0.01 < X < 1; outside, mainly below, it gives results no passive material can have, so the layered
 * models use `mikiPorous`.
 * Errors: ArgumentError for a negative flow resistivity or a frequency that isn't above 0.
 */
export function delanyBazleyPorous(flowResistivity: number, hz: number, air: Air): PorousMedium {
  requireNumber('flow resistivity', flowResistivity, { atLeast: 0, unit: 'Pa s/m2' });
  requireNumber('frequency', hz, { above: 0, unit: 'Hz' });
  const x = (air.density * hz) / flowResistivity;
  const k = (2 * Math.PI * hz) / air.soundSpeed;
  return {
    characteristicImpedance: {
      re: air.impedance * (1 + 0.0571 * x ** -0.754),
      im: -air.impedance * 0.087 * x ** -0.732,
    },
    wavenumber: { re: k * (1 + 0.0978 * x ** -0.7), im: -k * 0.189 * x ** -0.595 },
  };
}
