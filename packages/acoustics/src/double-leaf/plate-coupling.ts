import type { Air } from '../air/air-properties.js';
import { integrateAdaptive } from '../math/integrate-adaptive.js';
import type { WallLeaf } from './wall-leaf.js';

const tolerance = 1e-4;
const evaluationLimit = 20_000;

/**
 * Mean-square velocity of an infinite plate in a diffuse field over that of a limp, heavy sheet, 8 rho c I/(omega m)^2.
 *
 * Equation: V = Int_0^1 dw/[(1 - x^2 s^4)^2 + (eta x^2 s^4 + r/w)^2], w = cos(theta), s^2 = 1 - w^2, x = f/fc,
 * r = 2 rho c/(omega m). By reciprocity the same factor raises what a plate driven at a point radiates.
 * Source: thin-plate impedance in a diffuse field (derived). It holds across coincidence; 1 far below it for heavy sheets.
 */
export function diffuseResponseFactor(leaf: WallLeaf, hz: number, air: Air): number {
  return coupling(leaf, hz, air, 1, (w) => w);
}

/**
 * Power radiated per length by an infinite plate driven along a line over rho F'^2/(2 omega m^2), to one side.
 *
 * Equation: V = (2/pi) Int_0^(pi/2) dphi/[(1 - x^2 sin^4 phi)^2 + (eta x^2 sin^4 phi + r/cos phi)^2]; symbols as above.
 * Source: wavenumber integral of the driven plate (derived). Free bending waves count above coincidence, where they
 * radiate; below it those of an infinite plate do not.
 */
export function lineRadiationFactor(leaf: WallLeaf, hz: number, air: Air): number {
  return (2 / Math.PI) * coupling(leaf, hz, air, Math.PI / 2, Math.cos);
}

function coupling(leaf: WallLeaf, hz: number, air: Air, end: number, cosineAt: (x: number) => number): number {
  const square = (hz / leaf.criticalFrequency) ** 2;
  const radiation = air.impedance / (Math.PI * hz * leaf.surfaceMass);
  // The peak at the coincidence angle is met by ending an interval there.
  const matched = square > 1 ? Math.sqrt(1 - 1 / Math.sqrt(square)) : 0;
  const peak = end === 1 ? matched : Math.acos(matched);
  const breaks = peak > 0 && peak < end ? [0, peak, end] : [0, end];
  const { values } = integrateAdaptive(
    (x, out) => {
      const cosine = Math.max(cosineAt(x), 1e-12);
      const bending = square * (1 - cosine * cosine) ** 2;
      out[0] = 1 / ((1 - bending) ** 2 + (leaf.lossFactor * bending + radiation / cosine) ** 2);
    },
    1,
    breaks,
    tolerance,
    evaluationLimit,
  );
  return values[0]!;
}
