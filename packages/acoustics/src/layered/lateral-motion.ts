import type { Air } from '../air/air-properties.js';
import { gaussLegendre } from '../math/gauss-legendre.js';
import type { GapLosses } from './air-gap-fluid.js';
import type { PanelSize } from './layer.js';

/** A part of the energy in a cavity whose motion runs sideways with `share` of the squared trace of the incident wave. */
export type LateralMotion = { readonly share: 0 | 0.5 | 1; readonly weight: number };

/** Parts of the energy below this are counted with their neighbour: a resonance of 20 dB would add 0.4 dB. */
const negligible = 0.001;

/**
 * How the sound in a shallow cavity of this width and height moves sideways when a diffuse field presses on it.
 *
 * A wave that arrives at an angle presses on a cavity with the trace wavenumber k u, u = sin(theta) cos(phi), but between
 * two studs or two sides of a reveal only standing waves exist. One of them is the uniform motion, which runs nowhere and
 * takes sinc^2(k u b/2) of the energy; the others are taken to run as the trace does. Along a side b the uniform part is
 * w = < sinc^2(k u b/2) >, the mean over the unit circle that the traces of a diffuse field fill evenly. Both sides
 * together: nothing runs (w1 w2), one direction runs (half of the squared trace), both run.
 * Units: m, Hz; weights add up to 1. Source: derived. Valid for cavities thinner than half a wavelength; single standing
 * waves are smeared into a mean. A cavity so wide that nearly everything runs gives one part, share 1.
 */
export function lateralMotion({ width, height }: PanelSize, hz: number, air: Air): LateralMotion[] {
  const one = uniformPart(width, hz, air);
  const other = uniformPart(height, hz, air);
  const still = one * other;
  const half = one + other - 2 * still;
  if (still + half < negligible) return [{ share: 1, weight: 1 }];
  const parts: LateralMotion[] = [];
  if (still >= negligible) parts.push({ share: 0, weight: still });
  parts.push({ share: 0.5, weight: still >= negligible ? half : half + still });
  const running = 1 - still - half;
  if (running >= negligible) parts.push({ share: 1, weight: running });
  const sum = parts.reduce((total, { weight }) => total + weight, 0);
  return parts.map(({ share, weight }) => ({ share, weight: weight / sum }));
}

/** Half k b above which the mean is taken as the first two terms of its series for a wide cavity. */
const wide = 30;
const { nodes, weights } = gaussLegendre(24);

function uniformPart(side: number, hz: number, air: Air): number {
  const x = (Math.PI * hz * side) / air.soundSpeed;
  if (x >= wide) return 2 / x - 1 / (x * x);
  let sum = 0;
  for (let i = 0; i < nodes.length; i++) {
    // u = sin t makes the density of the traces, (4/pi) sqrt(1 - u^2) du, smooth at the ends.
    const t = (Math.PI / 4) * (nodes[i]! + 1);
    const phase = x * Math.sin(t);
    const sinc = phase < 1e-6 ? 1 : Math.sin(phase) / phase;
    sum += weights[i]! * (sinc * Math.cos(t)) ** 2;
  }
  return sum;
}

/** The losses of a wall's gaps for each part of the motion in them; the smallest cavity decides for all of them. */
export function byLateralMotion(losses: GapLosses, hz: number, air: Air): { losses: GapLosses; weight: number }[] {
  let smallest: PanelSize | undefined;
  for (const bay of losses.bays ?? []) {
    if (bay !== undefined && (smallest === undefined || bay.width < smallest.width)) smallest = bay;
  }
  if (smallest === undefined) return [{ losses, weight: 1 }];
  return lateralMotion(smallest, hz, air).map(({ share, weight }) => ({
    losses: { ...losses, lateralShare: share },
    weight,
  }));
}
