import type { Air } from '../air/air-properties.js';
import { requireNumber } from '../errors/require-number.js';
import type { PanelSize } from '../layered/layer.js';
import { limitingAngle } from '../panels/limiting-angle.js';
import { massLawField } from '../panels/mass-law.js';
import type { TransmissionLoss } from '../quantities/transmission-loss.js';
import { checkConnection, connectionPathTransmission, type YieldingConnection } from './connection-path.js';
import { doubleLeafResonance } from './double-leaf-resonance.js';
import type { LeafCavity } from './leaf-cavity.js';
import { type LeafConditions, lossAtFrequencies } from './leaf-conditions.js';
import { checkWallLeaf, type WallLeaf } from './wall-leaf.js';

/** A wall as J.L. Davy's airborne model sees it. */
export type DavyWall = {
  readonly leaves: readonly [WallLeaf, WallLeaf];
  readonly cavity: LeafCavity;
  /** Absorption coefficient of the cavity, above 0: 1 with thick fill; 0.1 to 0.15 when empty (from memory). */
  readonly cavityAbsorption: number;
  readonly size: PanelSize;
  /** deg, above which directions do not count however large the wall: `davyLargestAngleDeg`. */
  readonly largestAngleDeg: number;
};

/** Largest angle of incidence of the double-leaf model, deg (J.L. Davy 2010, from memory; 80 in 1991). */
export const davyLargestAngleDeg = 61;

/**
 * Transmission loss of two leaves without connections by J.L. Davy's model, dB.
 *
 * Equation: above f0 tau = (1 - q)/{[h + p q][h + p]}, the integral of 1/(h + p cos^2 theta)^2 over sin^2 theta up to the
 * limiting angle, q its squared cosine; h = (a2/a1 + a1/a2)/2, p = a1 a2 alpha, a = (pi f m/(rho c)) sqrt(K). Below 2/3 f0
 * the field-incidence mass law of both leaves; in between straight over lg f. alpha is no more than k d: below
 * fl = c/(2 pi d) the cavity acts as a spring, as in `sharpDoubleLeaf`.
 * K = (1 - x^2)^2, x = f/fc, below coincidence, no less than 2 eta x/pi; above it 2 eta x/pi, no more than 1.
 * Units: SI; angle of `limitingAngle`. Source: J.L. Davy 1990, 1991 (from memory); the limit k d follows from
 * the spring of a thin cavity (derived); K at and above coincidence is carried over from single leaves here, not Davy's.
 * Valid for leaves lighter than masonry; not for small panels, k sqrt(S) below 1, where it takes normal incidence.
 * Errors: ArgumentError for a wall or a frequency that cannot be.
 */
export function davyDoubleLeaf(wall: DavyWall, conditions: LeafConditions): TransmissionLoss {
  checkDavyWall(wall);
  return lossAtFrequencies(conditions, (hz) => davyAirborneAt(wall, hz, conditions.air));
}

/**
 * Transmission loss of two leaves with connections, dB: `davyDoubleLeaf` and `connectionPathTransmission` added as energy.
 *
 * Equation: tau = tau(airborne) + tau(connections) above f0, the airborne path alone below it.
 * Source: J.L. Davy 1991 (from memory) for the sum. Validity: see those two functions.
 * Errors: ArgumentError for a wall, connection or frequency that cannot be.
 */
export function connectedDoubleLeaf(
  wall: DavyWall,
  connection: YieldingConnection,
  conditions: LeafConditions,
): TransmissionLoss {
  checkDavyWall(wall);
  checkConnection(connection);
  const { air } = conditions;
  const [first, second] = wall.leaves;
  const f0 = doubleLeafResonance(first.surfaceMass, second.surfaceMass, wall.cavity, air);
  return lossAtFrequencies(conditions, (hz) => {
    const airborne = davyAirborneAt(wall, hz, air);
    if (hz < f0) return airborne;
    const path = connectionPathTransmission(wall.leaves, connection, hz, air);
    return -10 * Math.log10(Math.min(1, 10 ** (-airborne / 10) + path));
  });
}

/** The airborne path at one frequency, unchecked. */
export function davyAirborneAt(wall: DavyWall, hz: number, air: Air): number {
  const [first, second] = wall.leaves;
  const f0 = doubleLeafResonance(first.surfaceMass, second.surfaceMass, wall.cavity, air);
  const together = (at: number) => massLawField(at, first.surfaceMass + second.surfaceMass, air);
  const start = (2 / 3) * f0;
  if (hz <= start) return together(hz);
  if (hz >= f0) return aboveResonance(wall, hz, air);
  const share = Math.log(hz / start) / Math.log(f0 / start);
  return (1 - share) * together(start) + share * aboveResonance(wall, f0, air);
}

function aboveResonance(
  { leaves, cavity, cavityAbsorption, size, largestAngleDeg }: DavyWall,
  hz: number,
  air: Air,
): number {
  const [a1, a2] = leaves.map((leaf) => reduced(leaf, hz, air)) as [number, number];
  const limit = (limitingAngle(hz, size, air, largestAngleDeg) * Math.PI) / 180;
  const q = Math.cos(limit) ** 2;
  const alpha = Math.min(cavityAbsorption, (2 * Math.PI * hz * cavity.depth) / air.soundSpeed);
  const h = (a2 / a1 + a1 / a2) / 2;
  const p = a1 * a2 * alpha;
  // The mean over the directions that count; at normal incidence alone it is the integrand itself.
  const tau = q >= 1 ? 1 / (h + p) ** 2 : (1 - q) / ((h + p * q) * (h + p));
  return Math.max(0, -10 * Math.log10(tau));
}

/** Reduced mass reactance of a leaf with what bending takes from it. */
function reduced({ surfaceMass, criticalFrequency, lossFactor }: WallLeaf, hz: number, air: Air): number {
  const x = hz / criticalFrequency;
  const damped = Math.min(1, (2 * Math.max(lossFactor, 1e-6) * x) / Math.PI);
  const factor = x < 1 ? Math.max((1 - x * x) ** 2, damped) : damped;
  return ((Math.PI * hz * surfaceMass) / air.impedance) * Math.sqrt(factor);
}

function checkDavyWall({ leaves, cavityAbsorption, size, largestAngleDeg }: DavyWall): void {
  checkWallLeaf(leaves[0], 'the first leaf');
  checkWallLeaf(leaves[1], 'the second leaf');
  requireNumber('absorption of the cavity', cavityAbsorption, { above: 0, atMost: 1 });
  requireNumber('largest angle of incidence', largestAngleDeg, { above: 0, below: 90, unit: 'degrees' });
  requireNumber('width of the wall', size.width, { above: 0, unit: 'metres' });
  requireNumber('height of the wall', size.height, { above: 0, unit: 'metres' });
}
