import type { Air } from '../air/air-properties.js';
import { requireNumber } from '../errors/require-number.js';
import { gaussLegendre } from '../math/gauss-legendre.js';
import { integrateAdaptive } from '../math/integrate-adaptive.js';
import { checkOrthotropicPanel, coincidenceRatio, type OrthotropicPanel } from './orthotropic-panel.js';
import { requireFrequency } from './single-panel.js';

/** Directions in the plane of the panel, on each side of the direction in which coincidence begins. */
const azimuths = gaussLegendre(24);
const tolerance = 1e-4;
const mostEvaluations = 20_000;

/**
 * Transmission loss of an infinite orthotropic panel in a diffuse field up to a limiting angle, dB.
 *
 * Equation: tau = (2/pi) Integral_0^(pi/2) dphi Integral tau(theta, phi) dsin^2(theta)/sin^2(limit),
 * tau(theta, phi) = 1/|1 + Z cos(theta)/(2 rho c)|^2 with Z of `orthotropicImpedance`.
 * Units: Hz, degrees.
 * Source: M. Heckl, Acustica 10 (1960) 109 (from memory); integrated here, with the azimuth of first coincidence as a
 * break. With equal stiffnesses it is the isotropic panel.
 * Valid for wave lengths far above the pitch of ribs or corrugations, so that the panel acts as a uniform one.
 * Errors: ArgumentError for arguments that cannot be; Error when an integral does not converge.
 */
export function orthotropicTransmissionLoss(panel: OrthotropicPanel, limitDeg: number, hz: number, air: Air): number {
  checkOrthotropicPanel(panel);
  requireFrequency(hz);
  requireNumber('limiting angle', limitDeg, { above: 0, atMost: 90, unit: 'degrees' });
  const cosLimit = limitDeg === 90 ? 0 : Math.cos((limitDeg * Math.PI) / 180);
  const reactance = (Math.PI * hz * panel.surfaceMass) / air.impedance;
  let sum = 0;
  const edges = azimuthBreaks(panel, hz, air);
  for (let piece = 0; piece + 1 < edges.length; piece++) {
    const half = (edges[piece + 1]! - edges[piece]!) / 2;
    azimuths.nodes.forEach((node, index) => {
      const ratio = coincidenceRatio(panel, hz, edges[piece]! + half * (1 + node), air);
      sum += half * azimuths.weights[index]! * overPolar(reactance, ratio, panel.lossFactor, cosLimit, hz);
    });
  }
  return -10 * Math.log10((2 / Math.PI) * sum) + 10 * Math.log10(1 - cosLimit ** 2);
}

/** 2 Integral tau(u) u du from the cosine of the limit to 1, u the cosine of the angle. */
function overPolar(reactance: number, ratio: number, lossFactor: number, cosLimit: number, hz: number): number {
  const breaks = [cosLimit, 1];
  if (ratio > 1) {
    const cosine = Math.sqrt(1 - 1 / ratio);
    const wide = Math.min(0.3, lossFactor + 1 / (reactance * Math.max(cosine, 0.05)));
    for (const place of [cosine - wide, cosine, cosine + wide]) if (place > cosLimit && place < 1) breaks.push(place);
  }
  breaks.sort((a, b) => a - b);
  const { values, converged } = integrateAdaptive(
    (u, out) => {
      const bending = ratio ** 2 * (1 - u * u) ** 2;
      const x = reactance * u;
      out[0] = (2 * u) / ((1 + x * bending * lossFactor) ** 2 + (x * (1 - bending)) ** 2);
    },
    1,
    breaks,
    tolerance,
    mostEvaluations,
  );
  if (!converged) throw new Error(`sum over directions did not converge at ${hz} Hz, expected an error below 1e-4`);
  return values[0]!;
}

/** Quarter turn, divided where coincidence first appears: cos^2(phi) = (1 - b)/(a - b) for ratios a and b of the axes. */
function azimuthBreaks(panel: OrthotropicPanel, hz: number, air: Air): number[] {
  const along = coincidenceRatio(panel, hz, 0, air);
  const across = coincidenceRatio(panel, hz, Math.PI / 2, air);
  const share = (1 - across) / (along - across);
  const quarter = Math.PI / 2;
  return share > 0 && share < 1 ? [0, Math.acos(Math.sqrt(share)), quarter] : [0, quarter];
}
