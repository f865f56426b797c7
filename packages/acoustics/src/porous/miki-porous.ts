import type { Air } from '../air/air-properties.js';
import { requireNumber } from '../errors/require-number.js';
import { keepPassive, type PorousMedium } from './porous-medium.js';

/**
 * Fibrous material by Miki's regression.
 *
 * Equations, with Y = f/sigma: Zc = rho c (1 + 0.070 Y^-0.632 - j 0.107 Y^-0.632),
 * k = (omega/c)(1 + 0.109 Y^-0.618 - j 0.160 Y^-0.618); sigma in Pa s/m2, f in Hz.
 * Source: Y. Miki, J. Acoust. Soc. Jpn (E) 11 (1990) 19, Eqs. (30)-(34) (as transcribed).
 * Valid 0.01 < Y < 1; used outside with `keepPassive`.
 * Errors: ArgumentError for a negative flow resistivity or a frequency that isn't above 0.
 * See also: `delanyBazleyPorous`, `limpFrame`.
 *
 * @example
 * ```ts
 * import { airProperties } from '@boothwright/acoustics/air';
 * import { mikiPorous } from '@boothwright/acoustics/porous';
 *
 * const air = airProperties({ temperature: 20, relativeHumidity: 0.5 });
 * const { re, im } = mikiPorous(8000, 1000, air).characteristicImpedance;
 * [re, im]; // [520, -164]
 * ```
 */
export function mikiPorous(flowResistivity: number, hz: number, air: Air): PorousMedium {
  requireNumber('flow resistivity', flowResistivity, { atLeast: 0, unit: 'Pa s/m2' });
  requireNumber('frequency', hz, { above: 0, unit: 'Hz' });
  const y = hz / flowResistivity;
  const forImpedance = y ** -0.632;
  const forWavenumber = y ** -0.618;
  const k = (2 * Math.PI * hz) / air.soundSpeed;
  return keepPassive(
    {
      characteristicImpedance: {
        re: air.impedance * (1 + 0.07 * forImpedance),
        im: -air.impedance * 0.107 * forImpedance,
      },
      wavenumber: { re: k * (1 + 0.109 * forWavenumber), im: -k * 0.16 * forWavenumber },
    },
    hz,
  );
}
