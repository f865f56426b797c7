import type { Air } from '@boothwright/acoustics';
import { exactHz } from '../../bands/grid.js';

/**
 * How much more sound a duct end in a wall takes in than falls on its own area, dB by band, never negative.
 *
 * Equation: tau = lambda^2 (1 - |r|^2) / (pi S), with 1 - |r|^2 = 10^(-ERL/10); 10 lg of it, at least 0.
 * Derivation: reciprocity. An end that radiates the share 1 - |r|^2 of a plane wave has, averaged over the half space, the
 * receiving area lambda^2 (1 - |r|^2) / (2 pi); in a diffuse field of pressure p that is the power p^2 / (2 rho c) times
 * this area, against S p^2 / (4 rho c) that falls on the opening. At low frequency the result is 8, or 9 dB: the wall
 * doubles the pressure and the duct takes a full plane wave. Where higher duct modes carry sound the opening takes in
 * what falls on it.
 * Units: area m2, end reflection dB. Source: derived; reciprocity of radiation and reception (common practice).
 * Valid: an end flush with a large wall.
 */
export function ductEntryGain(area: number, endReflection: readonly number[], air: Air): number[] {
  return exactHz.map((hz, band) => {
    const wavelength = air.soundSpeed / hz;
    const radiated = 10 ** (-(endReflection[band] as number) / 10);
    return 10 * Math.log10(Math.max(1, (wavelength ** 2 * radiated) / (Math.PI * area)));
  });
}
