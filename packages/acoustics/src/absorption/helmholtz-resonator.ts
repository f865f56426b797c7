import type { Air } from '../air/air-properties.js';
import { requireNumber } from '../errors/require-number.js';
import { type Complex, complex, scale, squaredSize } from '../math/complex.js';
import { perforatedImpedance } from './perforated-impedance.js';

/** One resonator whose round neck opens flush in a large hard wall. */
export type HelmholtzResonator = {
  /** m3, of the cavity */
  readonly volume: number;
  /** m */
  readonly neckRadius: number;
  /** m */
  readonly neckLength: number;
  /** Pa s/m, of a cloth across the neck; 0 for none. */
  readonly neckFlowResistance: number;
};

/**
 * Resonance of a single resonator, Hz.
 *
 * Equation: f = (c/2 pi) sqrt(S/(V (l + 2 d_e))), d_e = 8 a/(3 pi) at each mouth; a radius and l length of the neck in m,
 * V in m3.
 * Source: common practice. Valid for a neck much narrower than the cavity and a resonator much smaller than a wavelength.
 * Errors: ArgumentError for a size that cannot be.
 */
export function helmholtzFrequency(resonator: HelmholtzResonator, air: Air): number {
  checkResonator(resonator);
  const { volume, neckRadius, neckLength } = resonator;
  const length = neckLength + (16 * neckRadius) / (3 * Math.PI);
  return (air.soundSpeed / (2 * Math.PI)) * Math.sqrt((Math.PI * neckRadius ** 2) / (volume * length));
}

/**
 * Absorption area of a single resonator in a diffuse field, m2, at single frequencies in Hz.
 *
 * Equation: A = 8 rho c R_i/|Z|^2 with Z = R_i + R_rad + j X: neck of `perforatedImpedance` and cloth over the area S of the
 * neck, spring rho c^2/(j omega V), R_rad = rho omega^2/(2 pi c). The wall doubles the pressure of each wave, so the
 * mean-square pressure at the neck is twice that of the room. Never more than lambda^2/pi, reached at resonance when the
 * losses equal the radiation.
 * Source: derived from the definition of the absorption area; the form is common practice.
 * Valid for a resonator much smaller than a wavelength, further than half a wavelength from the next one.
 * Errors: ArgumentError for a size or frequency that cannot be.
 */
export function helmholtzAbsorptionArea(resonator: HelmholtzResonator, hz: readonly number[], air: Air): number[] {
  checkResonator(resonator);
  return hz.map((frequency) => {
    requireNumber('frequency', frequency, { above: 0, unit: 'hertz' });
    const inner = innerImpedance(resonator, frequency, air);
    const radiation = (air.density * (2 * Math.PI * frequency) ** 2) / (2 * Math.PI * air.soundSpeed);
    const whole = squaredSize({ re: inner.re + radiation, im: inner.im });
    return (8 * air.impedance * inner.re) / whole;
  });
}

/** Everything but the radiation, Pa s/m3. */
function innerImpedance(resonator: HelmholtzResonator, hz: number, air: Air): Complex {
  const { volume, neckRadius, neckLength, neckFlowResistance } = resonator;
  const area = Math.PI * neckRadius ** 2;
  // An open share so small that other holes are out of reach; it cancels.
  const alone = 1e-12;
  const holes = perforatedImpedance({ thickness: neckLength, holeDiameter: 2 * neckRadius, openArea: alone }, hz, air);
  const neck = scale(holes, alone / area);
  const spring = (air.density * air.soundSpeed ** 2) / (2 * Math.PI * hz * volume);
  return complex(neck.re + neckFlowResistance / area, neck.im - spring);
}

function checkResonator({ volume, neckRadius, neckLength, neckFlowResistance }: HelmholtzResonator): void {
  requireNumber('volume of the cavity', volume, { above: 0, unit: 'cubic metres' });
  requireNumber('radius of the neck', neckRadius, { above: 0, unit: 'metres' });
  requireNumber('length of the neck', neckLength, { atLeast: 0, unit: 'metres' });
  requireNumber('flow resistance in the neck', neckFlowResistance, { atLeast: 0, unit: 'Pa s/m' });
}
