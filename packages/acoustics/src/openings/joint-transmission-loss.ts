import type { Air } from '../air/air-properties.js';
import { requireNumber } from '../errors/require-number.js';
import { add, complex, multiply } from '../math/complex.js';
import { channelMatrix, narrowGapMedium } from './narrow-gap-medium.js';
import { checkSlit, type Slit, slitLoss, slitTransmissionLoss } from './slit-transmission-loss.js';

/** What closes a joint. */
export type JointSeal =
  /**
   * A strip squeezed into the joint: `surfaceMass` in kg/m2 of joint area, and the share of the length, 0 to 1, where it
   * does not touch (corners, hinges, worn places) and the joint is open.
   */
  | { readonly kind: 'compressed'; readonly surfaceMass: number; readonly openShare: number }
  /** Faces that lie against each other: a residual gap, m, over a contact of the given depth, m. */
  | { readonly kind: 'contact'; readonly residualGap: number; readonly contactDepth: number };

/** A joint by its length, clear gap and depth through the wall, m, with or without a seal. */
export type Joint = Slit & { readonly length: number; readonly seal?: JointSeal };

/**
 * Transmission loss of a joint, dB, referred to its own clear area, length times gap; infinite when nothing passes.
 *
 * Equation: without a seal `slitTransmissionLoss`. Compressed: tau = (1 - q) tau_sealed + q tau_open, q the open share,
 * tau_sealed of the slit with the mass j omega m in the middle of its air. Contact: tau = (w_r/w) tau of a slit of the
 * residual gap w_r and of the contact depth; the wider part of the joint before and behind it is left out.
 * Units: m, kg/m2, Hz.
 * Source: derived here. Residual gaps and open shares are inputs: they are found by measurement, not by theory.
 * Valid for straight joints. The stiffness of the strip is left out: it counts below its resonance in the joint.
 * Errors: ArgumentError for a joint that cannot be, a share outside 0 .. 1, or a residual gap wider than the joint.
 */
export function jointTransmissionLoss(joint: Joint, hz: number, air: Air): number {
  checkJoint(joint);
  requireNumber('frequency', hz, { above: 0, unit: 'Hz' });
  const { gap, depth, position, seal } = joint;
  if (gap === 0 || seal === undefined) return slitTransmissionLoss(joint, hz, air);
  if (seal.kind === 'contact') {
    const residual = { gap: seal.residualGap, depth: seal.contactDepth, position };
    return slitTransmissionLoss(residual, hz, air) - 10 * Math.log10(seal.residualGap / gap);
  }
  const open = 10 ** (-slitTransmissionLoss(joint, hz, air) / 10);
  // Half of the air, the mass, the other half.
  const half = channelMatrix(narrowGapMedium(gap, hz, air), depth / 2);
  const mass = complex(0, 2 * Math.PI * hz * seal.surfaceMass);
  const first = {
    a: half.a,
    b: add(multiply(half.a, mass), half.b),
    c: half.c,
    d: add(multiply(half.c, mass), half.d),
  };
  const sealed =
    10 **
    (-slitLoss(
      joint,
      {
        a: add(multiply(first.a, half.a), multiply(first.b, half.c)),
        b: add(multiply(first.a, half.b), multiply(first.b, half.d)),
        c: add(multiply(first.c, half.a), multiply(first.d, half.c)),
        d: add(multiply(first.c, half.b), multiply(first.d, half.d)),
      },
      hz,
      air,
    ) /
      10);
  return -10 * Math.log10((1 - seal.openShare) * sealed + seal.openShare * open);
}

/**
 * Area that would let through as much if it were fully open, m2: length times gap times 10^(-R/10).
 *
 * It may be larger than the joint, at resonance. Source and errors: see `jointTransmissionLoss`.
 */
export function jointTransmittingArea(joint: Joint, hz: number, air: Air): number {
  return joint.length * joint.gap * 10 ** (-jointTransmissionLoss(joint, hz, air) / 10);
}

function checkJoint(joint: Joint): void {
  checkSlit(joint);
  requireNumber('length of the joint', joint.length, { atLeast: 0, unit: 'metres' });
  const { seal } = joint;
  if (seal?.kind === 'compressed') {
    requireNumber('mass of the seal', seal.surfaceMass, { atLeast: 0, unit: 'kg/m2' });
    requireNumber('open share of the seal', seal.openShare, { atLeast: 0, atMost: 1 });
  }
  if (seal?.kind === 'contact') {
    requireNumber('residual gap of the seal', seal.residualGap, { atLeast: 0, atMost: joint.gap, unit: 'metres' });
    requireNumber('contact depth of the seal', seal.contactDepth, { atLeast: 0, unit: 'metres' });
  }
}
