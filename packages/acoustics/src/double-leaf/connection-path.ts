import type { Air } from '../air/air-properties.js';
import { requireNumber } from '../errors/require-number.js';
import { diffuseResponseFactor, lineRadiationFactor } from './plate-coupling.js';
import type { WallLeaf } from './wall-leaf.js';

/** Connections between two leaves that may yield: along parallel lines or at the points of a square grid. */
export type YieldingConnection = {
  readonly kind: 'lines' | 'points';
  /** m */
  readonly spacing: number;
  /** How far it gives: m2/N (per length) for lines, m/N for points; 0 when rigid. */
  readonly compliance: number;
};

/**
 * Compliance of common steel studs, m2/N: J.L. Davy, Applied Acoustics 1991, also cited by Bies and Hansen (from memory).
 * Real studs spread widely and change with frequency. With this value the studs of a filled wall of light boards carry less
 * than the air in every band, which is better than common handbook values of such walls: an upper bound.
 */
export const steelStudCompliance = 1e-6;

/**
 * Transmission coefficient of the path through connections far above the mass-air-mass resonance.
 *
 * Equations: the first leaf moves as in `diffuseResponseFactor`, v1^2 = 8 rho c V1/(omega m1)^2 for an intensity of 1; the
 * force is v1/|Y1 + Y2 + j omega C|. Lines: Y = (1 - j) sqrt(omega_c)/(4 m c sqrt(omega)), the second leaf radiates
 * rho F'^2/(2 omega m2^2) times `lineRadiationFactor` per length, tau = that/b. Points: Y = omega_c/(8 m c^2), radiation
 * rho F^2/(2 pi c m2^2) times `diffuseResponseFactor`, tau = that/e^2. For lines far below both critical frequencies this
 * is tau = 64 rho^2 c^3/{[g^2 + (4 omega^1.5 m1 m2 c C - g)^2] b omega^2}, g = m1 sqrt(omega_c2) + m2 sqrt(omega_c1).
 * Units: SI. Source: derived here from the impedances of thin plates; the limit is J.L. Davy's formula of 1991 in
 * T.E. Vigran: Building Acoustics (2008), Eq. 8.27 (read in a transcription in which part of the print is garbled).
 * Valid well above the mass-air-mass resonance and below the resonances of the connection itself; connections without
 * mass, turning not resisted, no free waves of finite leaves below coincidence. A leaf without stiffness takes no force.
 * Errors: ArgumentError for a spacing or compliance that cannot be.
 */
export function connectionPathTransmission(
  leaves: readonly [WallLeaf, WallLeaf],
  connection: YieldingConnection,
  hz: number,
  air: Air,
): number {
  checkConnection(connection);
  const [first, second] = leaves;
  if (!Number.isFinite(first.criticalFrequency) || !Number.isFinite(second.criticalFrequency)) return 0;
  const omega = 2 * Math.PI * hz;
  const c = air.soundSpeed;
  const lines = connection.kind === 'lines';
  const give = (leaf: WallLeaf) => {
    const critical = 2 * Math.PI * leaf.criticalFrequency;
    return lines
      ? Math.sqrt(critical / omega) / (4 * leaf.surfaceMass * c)
      : critical / (8 * leaf.surfaceMass * c ** 2);
  };
  const plates = give(first) + give(second);
  const spring = omega * connection.compliance;
  const mobilitySquared = plates ** 2 + (lines ? (spring - plates) ** 2 : spring ** 2);
  const velocity = (8 * air.impedance * diffuseResponseFactor(first, hz, air)) / (omega * first.surfaceMass) ** 2;
  const force = velocity / mobilitySquared;
  const perConnection = lines
    ? (air.density * lineRadiationFactor(second, hz, air)) / (2 * omega * second.surfaceMass ** 2)
    : (air.density * diffuseResponseFactor(second, hz, air)) / (2 * Math.PI * c * second.surfaceMass ** 2);
  return (force * perConnection) / (lines ? connection.spacing : connection.spacing ** 2);
}

/** Errors: ArgumentError that names spacing or compliance. */
export function checkConnection({ spacing, compliance }: YieldingConnection): void {
  requireNumber('spacing of the connections', spacing, { above: 0, unit: 'metres' });
  requireNumber('compliance of the connections', compliance, { atLeast: 0 });
}
