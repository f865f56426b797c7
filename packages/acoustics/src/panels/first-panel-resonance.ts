import { bendingStiffness } from './bending-stiffness.js';
import type { Plate } from './plate.js';

/** How the rim of a plate is held. `between` is the geometric mean of the two, for a panel screwed to a frame. */
export type Edges = 'simply-supported' | 'clamped' | 'between';

/** Roots of the clamped-clamped beam as they enter Warburton's expression for the lowest mode. */
const clampedBeam = 1.506;
const clampedSlope = 1.248;

/**
 * Lowest bending resonance of a rectangular plate, Hz.
 *
 * Equation: f11 = (pi/2) sqrt(B/m) sqrt(G^4 (1/a^4 + 1/b^4) + 2 H^2/(a^2 b^2)), with G = H = 1 for simply supported and
 * G = 1.506, H = 1.248 for clamped edges. a, b in m.
 * Source: G.B. Warburton, Proc. Inst. Mech. Eng. 168 (1954) 371 (from memory); simply supported: thin-plate theory.
 * Valid for thin plates; the clamped value is an upper bound within about 1 %.
 */
export function firstPanelResonance(plate: Plate, a: number, b: number, edges: Edges): number {
  const speed = Math.sqrt(bendingStiffness(plate) / (plate.density * plate.thickness));
  return modeFrequency(speed, a, b, 1, 1) * edgeFactor(a, b, edges);
}

/** Mode (m, n) of a simply supported plate, Hz, from sqrt(B/m) in m2/s. */
export function modeFrequency(speed: number, a: number, b: number, m: number, n: number): number {
  return (Math.PI / 2) * speed * ((m / a) ** 2 + (n / b) ** 2);
}

/** First resonance with these edges over that of the simply supported plate. */
export function edgeFactor(a: number, b: number, edges: Edges): number {
  if (edges === 'simply-supported') return 1;
  const simply = 1 / a ** 2 + 1 / b ** 2;
  const clamped = Math.sqrt(clampedBeam ** 4 * (1 / a ** 4 + 1 / b ** 4) + (2 * clampedSlope ** 2) / (a ** 2 * b ** 2));
  return edges === 'clamped' ? clamped / simply : Math.sqrt(clamped / simply);
}
