import type { Air } from '../air/air-properties.js';
import { requireNumber } from '../errors/require-number.js';
import { massLawField } from '../panels/mass-law.js';
import { sharpTransmissionLoss } from '../panels/sharp-transmission-loss.js';
import type { TransmissionLoss } from '../quantities/transmission-loss.js';
import { doubleLeafResonance } from './double-leaf-resonance.js';
import { type LeafConditions, lossAtFrequencies } from './leaf-conditions.js';
import { checkSharpWall, type SharpWall, sharpDoubleLeafAt } from './sharp-double-leaf.js';
import { singlePanelOfLeaf, type WallLeaf } from './wall-leaf.js';

/** Rigid connections between two leaves: along parallel lines, or at the points of a square grid. Spacing in m. */
export type RigidConnection = { readonly kind: 'lines' | 'points'; readonly spacing: number };

/**
 * Gain of a wall bridged by rigid lines over the field-incidence mass law of both leaves, dB.
 *
 * Equation: 10 lg(b fc) - 10 lg(2 c/pi), sqrt(fc) = (m1 sqrt(fc2) + m2 sqrt(fc1))/(m1 + m2); b in m, fc in Hz. The constant
 * is 23.4 dB in room air.
 * Source: T.E. Vigran: Building Acoustics (2008), Eq. 8.26 (read in a transcription: 23 dB); B.H. Sharp's constant with
 * m1/(m1 + m2) is 18 dB for two equal leaves, the same as 24 (from memory). Infinite without stiffness.
 */
export function sharpLineGain(leaves: readonly [WallLeaf, WallLeaf], spacing: number, air: Air): number {
  requireNumber('spacing of the lines', spacing, { above: 0, unit: 'metres' });
  const [a, b] = leaves;
  const root =
    (a.surfaceMass * Math.sqrt(b.criticalFrequency) + b.surfaceMass * Math.sqrt(a.criticalFrequency)) /
    (a.surfaceMass + b.surfaceMass);
  return 10 * Math.log10((Math.PI * spacing * root ** 2) / (2 * air.soundSpeed));
}

/**
 * Gain of a wall bridged by rigid points over the field-incidence mass law of both leaves, dB.
 *
 * Equation: 20 lg(e fc) - 10 lg(8 c^2/pi^3), fc = (m1 fc2 + m2 fc1)/(m1 + m2); e in m is the side of the square grid. The
 * constant is 44.8 dB in room air.
 * Source: point force on a thin plate and its near field (derived); B.H. Sharp's constant is 45 dB (from memory).
 */
export function sharpPointGain(leaves: readonly [WallLeaf, WallLeaf], spacing: number, air: Air): number {
  requireNumber('spacing of the points', spacing, { above: 0, unit: 'metres' });
  const [a, b] = leaves;
  const fc =
    (a.surfaceMass * b.criticalFrequency + b.surfaceMass * a.criticalFrequency) / (a.surfaceMass + b.surfaceMass);
  return 10 * Math.log10((Math.PI ** 3 * (spacing * fc) ** 2) / (8 * air.soundSpeed ** 2));
}

/**
 * Transmission loss of two leaves with rigid lines or points between them by B.H. Sharp's model, dB.
 *
 * Equation: above f0 tau = tau(no connections) + tau(bridges); the bridges lie at the field-incidence mass law of both
 * leaves plus `sharpLineGain` or `sharpPointGain`, less what each leaf loses against its own mass law near coincidence.
 * The gain counts from 0 dB on: a bridge does not make the wall worse than one of the same mass.
 * Source: as those functions; the dips carried over from single leaves are a construction made here (within 1 dB of the
 * remembered 10 lg eta2 + 5 lg eta1 + 6 for two equal leaves of loss factor 0.02).
 * Valid for stiff connections above f0; no springs, see `connectedDoubleLeaf`.
 * Errors: ArgumentError for a wall, spacing or frequency that cannot be.
 */
export function sharpConnectedDoubleLeaf(
  wall: SharpWall,
  connection: RigidConnection,
  conditions: LeafConditions,
): TransmissionLoss {
  checkSharpWall(wall);
  const { air } = conditions;
  const [first, second] = wall.leaves;
  const gainOf = connection.kind === 'lines' ? sharpLineGain : sharpPointGain;
  const gain = Math.max(0, gainOf(wall.leaves, connection.spacing, air));
  const f0 = doubleLeafResonance(first.surfaceMass, second.surfaceMass, wall.cavity, air);
  return lossAtFrequencies(conditions, (hz) => {
    const airborne = sharpDoubleLeafAt(wall, hz, air);
    if (hz < f0) return airborne;
    const dip = (leaf: WallLeaf) =>
      Math.min(
        0,
        sharpTransmissionLoss(singlePanelOfLeaf(leaf, air), hz, air) - massLawField(hz, leaf.surfaceMass, air),
      );
    const bridged = Math.max(
      0,
      massLawField(hz, first.surfaceMass + second.surfaceMass, air) + gain + dip(first) + dip(second),
    );
    return -10 * Math.log10(Math.min(1, 10 ** (-airborne / 10) + 10 ** (-bridged / 10)));
  });
}
