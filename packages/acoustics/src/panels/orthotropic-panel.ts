import type { Air } from '../air/air-properties.js';
import { requireNumber } from '../errors/require-number.js';
import type { Complex } from '../math/complex.js';
import { criticalFrequencyOf } from './critical-frequency.js';
import { requireFrequency } from './single-panel.js';

/** A panel that is stiffer along one direction of its plane: ribbed, corrugated, or of wood. */
export type OrthotropicPanel = {
  /** kg/m2 */
  readonly surfaceMass: number;
  /** Bending stiffness per unit width along and across, N m. */
  readonly stiffnessAlong: number;
  readonly stiffnessAcross: number;
  readonly lossFactor: number;
};

/**
 * The two critical frequencies of an orthotropic panel, Hz, lower first: of the stiffer and of the softer direction.
 *
 * Equation: c^2/(2 pi) sqrt(m/B) for each direction. Source: common practice, see `criticalFrequency`.
 * Errors: ArgumentError for a panel that cannot be.
 */
export function orthotropicCriticalFrequencies(panel: OrthotropicPanel, air: Air): readonly [number, number] {
  checkOrthotropicPanel(panel);
  const along = criticalFrequencyOf(panel.surfaceMass, panel.stiffnessAlong, air);
  const across = criticalFrequencyOf(panel.surfaceMass, panel.stiffnessAcross, air);
  return along <= across ? [along, across] : [across, along];
}

/**
 * Pressure difference over normal velocity of an infinite orthotropic panel for a plane wave, Pa s/m.
 *
 * Equation: Z = j omega m {1 - (1 + j eta) sin^4(theta) [(f/fa) cos^2(phi) + (f/fb) sin^2(phi)]^2}, phi the azimuth from
 * the direction along, fa and fb the critical frequencies along and across.
 * Units: kg/m2, Hz, azimuth in degrees.
 * Source: M. Heckl, Acustica 10 (1960) 109 (from memory). The torsional stiffness is taken as sqrt(B along B across)
 * (M.T. Huber, from memory), which holds for plates made orthotropic by their material and is a little too stiff for
 * open ribs.
 * Errors: ArgumentError for a panel, frequency, or sine outside 0 .. 1.
 */
export function orthotropicImpedance(
  panel: OrthotropicPanel,
  hz: number,
  sinTheta: number,
  azimuthDeg: number,
  air: Air,
): Complex {
  checkOrthotropicPanel(panel);
  requireFrequency(hz);
  requireNumber('sine of the angle', sinTheta, { atLeast: 0, atMost: 1 });
  requireNumber('azimuth', azimuthDeg, { unit: 'degrees' });
  const reactance = 2 * Math.PI * hz * panel.surfaceMass;
  const bending = (coincidenceRatio(panel, hz, (azimuthDeg * Math.PI) / 180, air) * sinTheta ** 2) ** 2;
  return { re: reactance * bending * panel.lossFactor, im: reactance * (1 - bending) };
}

/** Frequency over the critical frequency of the direction of azimuth `phi`, rad. */
export function coincidenceRatio(panel: OrthotropicPanel, hz: number, phi: number, air: Air): number {
  const along = hz / criticalFrequencyOf(panel.surfaceMass, panel.stiffnessAlong, air);
  const across = hz / criticalFrequencyOf(panel.surfaceMass, panel.stiffnessAcross, air);
  return along * Math.cos(phi) ** 2 + across * Math.sin(phi) ** 2;
}

/**
 * Rejects an orthotropic panel that cannot exist.
 * Errors: ArgumentError that names the property.
 */
export function checkOrthotropicPanel(panel: OrthotropicPanel): void {
  requireNumber('surface mass of the panel', panel.surfaceMass, { above: 0, unit: 'kg/m2' });
  requireNumber('stiffness along', panel.stiffnessAlong, { atLeast: 0, unit: 'newton metres' });
  requireNumber('stiffness across', panel.stiffnessAcross, { atLeast: 0, unit: 'newton metres' });
  requireNumber('loss factor of the panel', panel.lossFactor, { atLeast: 0 });
}
