import type { Air } from '../air/air-properties.js';
import { add, type Complex, complex, divide, multiply, squaredSize } from '../math/complex.js';
import { radiationEfficiency } from '../panels/radiation-efficiency.js';
import type { Field, LineConnection } from './layer.js';
import type { Leaf } from './leaf.js';

/**
 * Force per length on a line over the velocity of the line, N s/m2.
 *
 * Equation: infinite plate Z' = 2 (1 + j) m c_B with c_B = (B omega^2/m)^(1/4); a leaf without stiffness moves only where
 * it is touched, Z' = j omega m w with w the width of the face of the stud (0 when not known).
 * Units: m in kg/m2, B in N m, w in m.
 * Source: L. Cremer, M. Heckl, B. Petersson: Structure-Borne Sound, 3rd ed. (2005) (from memory); limp leaf derived here.
 */
export function lineImpedance(leaf: Leaf, hz: number, contactWidth: number): Complex {
  const omega = 2 * Math.PI * hz;
  if (leaf.bendingStiffness === 0) return complex(0, omega * leaf.surfaceMass * contactWidth);
  const bendingSpeed = ((leaf.bendingStiffness * omega ** 2) / leaf.surfaceMass) ** 0.25;
  const size = 2 * leaf.surfaceMass * bendingSpeed;
  return complex(size, size);
}

/**
 * Share of its vibrational energy per radian that a leaf gives through studs to the leaf on the other side: a coupling
 * loss factor.
 *
 * Equation: eta_12 = |Z1'/(Z1' + Z2')|^2 |Z2'|^2 Re(1/Z2')/(omega m1 b), b the spacing; two equal leaves give
 * c_B/(2 omega b). Source: derived from `lineImpedance` for bending waves that meet the stud head-on.
 */
export function couplingLossFactor(from: Leaf, to: Leaf, connection: LineConnection, hz: number): number {
  const width = connection.width ?? 0;
  const z1 = lineImpedance(from, hz, width);
  const z2 = lineImpedance(to, hz, width);
  const sum = squaredSize(add(z1, z2));
  if (sum === 0) return 0;
  return ((squaredSize(z1) / sum) * z2.re) / (2 * Math.PI * hz * from.surfaceMass * connection.spacing);
}

/**
 * Transmission coefficient of the path through rigid, massless studs at one frequency.
 *
 * `freeVelocity` is the mean-square difference of the velocities the two leaves would have without studs, for an incident
 * intensity of 1: (m/s)^2 per W/m^2.
 *
 * Equations: force per length F'^2 = freeVelocity |Z1' Z2'/(Z1' + Z2')|^2; power radiated by the driven line
 * P_n' = rho F'^2/(2 omega m2^2), which is (2/pi) rho c lambda_c v^2 for a plate below its critical frequency; power fed
 * into bending waves F'^2 Re(1/Z2'); their velocity from omega (eta2 + 2 rho c s/(omega m2) + eta_21) m2 v^2 = that power
 * per spacing, radiated with rho c s v^2, s of `radiationEfficiency` for one bay between studs, eta_21 of
 * `couplingLossFactor` for what goes back.
 * Source: derived; near field and line impedance as in Cremer, Heckl, Petersson (2005) (from memory). Assumptions and
 * limits: docs/models/frame-connection.md.
 */
export function connectionTransmission(
  connection: LineConnection,
  driving: Leaf,
  driven: Leaf,
  freeVelocity: number,
  hz: number,
  air: Air,
  field: Field,
): number {
  const omega = 2 * Math.PI * hz;
  const width = connection.width ?? 0;
  const z1 = lineImpedance(driving, hz, width);
  const z2 = lineImpedance(driven, hz, width);
  const sum = add(z1, z2);
  if (squaredSize(sum) === 0) return 0;
  const force = freeVelocity * squaredSize(divide(multiply(z1, z2), sum));
  const mass = driven.surfaceMass;
  const nearField = (air.density * force) / (2 * omega * mass ** 2);
  if (driven.bendingStiffness === 0) return nearField / connection.spacing;
  const fed = (force * z2.re) / squaredSize(z2) / connection.spacing;
  const efficiency = radiationEfficiency(hz, driven.criticalHz, baySize(connection.spacing, field), air);
  const radiation = (air.impedance * efficiency) / (omega * mass);
  const back = couplingLossFactor(driven, driving, connection, hz);
  const reverberant = (fed * radiation) / (driven.lossFactor + 2 * radiation + back);
  return nearField / connection.spacing + reverberant;
}

/** A bay between two studs; without a panel size it is taken as very tall, so that its ends do not count. */
function baySize(spacing: number, field: Field): { width: number; height: number } {
  if (field.kind === 'limited') return { width: spacing, height: 1000 * spacing };
  return { width: spacing, height: Math.max(field.size.width, field.size.height) };
}
