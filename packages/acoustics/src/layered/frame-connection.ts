import type { Air } from '../air/air-properties.js';
import { requireNumber } from '../errors/require-number.js';
import { add, type Complex, complex, divide, squaredSize } from '../math/complex.js';
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
 * Errors: ArgumentError for a frequency that is not above 0, a width below 0, or a leaf without mass.
 */
export function lineImpedance(leaf: Leaf, hz: number, contactWidth: number): Complex {
  requireFrequency(hz);
  requireMass(leaf);
  requireNumber('width of studs', contactWidth, { atLeast: 0, unit: 'metres' });
  return impedanceOfLine(leaf, hz, contactWidth);
}

function impedanceOfLine(leaf: Leaf, hz: number, contactWidth: number): Complex {
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
 * Equation: eta_12 = Re(Y2')/|Y1' + Y2' + j omega C'|^2/(omega m1 b), Y' = 1/Z' of `lineImpedance`, C' the compliance of the
 * stud, b the spacing; two equal leaves on rigid studs give c_B/(2 omega b). The screws of a stud that yields add theirs,
 * n |F/v|^2/(8 sqrt(B2 m2) omega m1), n the number per area. Source: derived for bending waves that meet the stud head-on.
 * Errors: ArgumentError for a frequency, spacing or mass that is not above 0.
 */
export function couplingLossFactor(from: Leaf, to: Leaf, connection: LineConnection, hz: number): number {
  requireStuds(connection, from, to, hz);
  return lossByStuds(from, to, connection, hz);
}

/** The same of arguments that are known to be right. */
export function lossByStuds(from: Leaf, to: Leaf, connection: LineConnection, hz: number): number {
  const width = connection.width ?? 0;
  const omega = 2 * Math.PI * hz;
  const z2 = impedanceOfLine(to, hz, width);
  const force = forcePerVelocity(impedanceOfLine(from, hz, width), z2, connection, omega);
  const point = pointForcePerVelocity(from, to, connection, hz);
  const carried = force === 0 ? 0 : (force * z2.re) / squaredSize(z2) / connection.spacing;
  const byScrews = point === 0 ? 0 : (pointsPerArea(connection) * point) / pointImpedance(to);
  return (carried + byScrews) / (omega * from.surfaceMass);
}

/**
 * Squared force per length that studs carry over the squared difference of the velocities that the leaves would have
 * without them: |1/Z1' + 1/Z2' + j omega C'|^-2, in (N s/m2)^2.
 */
function forcePerVelocity(z1: Complex, z2: Complex, { compliance = 0 }: LineConnection, omega: number): number {
  if (squaredSize(z1) === 0 || squaredSize(z2) === 0) return 0;
  const mobility = add(divide(complex(1), z1), divide(complex(1), z2));
  return 1 / squaredSize(add(mobility, complex(0, omega * compliance)));
}

/**
 * Transmission coefficient of the path through massless studs, rigid or of a stated compliance, at one frequency.
 *
 * `freeVelocity` is the mean-square difference of the velocities the two leaves would have without studs, for an incident
 * intensity of 1: (m/s)^2 per W/m^2.
 *
 * Equations: force per length F'^2 = freeVelocity/|1/Z1' + 1/Z2' + j omega C'|^2; power radiated by the driven line
 * P_n' = rho F'^2/(2 omega m2^2), which is (2/pi) rho c lambda_c v^2 for a plate below its critical frequency; power fed
 * into bending waves F'^2 Re(1/Z2'); each screw of a stud that yields evens out what the line leaves of the difference,
 * |j omega C'/(1/Z1' + 1/Z2' + j omega C')|^2 of it, and adds the same for a point, with Z = 8 sqrt(B m) and
 * rho F^2/(2 pi c m2^2) radiated beside it; their velocity from omega (eta2 + 2 rho c s/(omega m2) + eta_21) m2 v^2 = that power
 * per spacing, radiated with rho c s v^2, s of `radiationEfficiency` for one bay between studs, eta_21 of
 * `couplingLossFactor` for what goes back.
 * Source: derived; near field and line impedance as in Cremer, Heckl, Petersson (2005) (from memory). Assumptions and
 * limits: docs/models/frame-connection.md.
 * Errors: ArgumentError for a frequency, spacing or mass that is not above 0, or a velocity below 0.
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
  requireStuds(connection, driving, driven, hz);
  requireNumber('mean-square difference of the velocities', freeVelocity, { atLeast: 0 });
  return transmissionThroughStuds(connection, driving, driven, freeVelocity, hz, air, field);
}

/** The same of arguments that are known to be right. */
export function transmissionThroughStuds(
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
  const z1 = impedanceOfLine(driving, hz, width);
  const z2 = impedanceOfLine(driven, hz, width);
  const force = freeVelocity * forcePerVelocity(z1, z2, connection, omega);
  const points = pointsPerArea(connection);
  const pointForce = points > 0 ? freeVelocity * pointForcePerVelocity(driving, driven, connection, hz) : 0;
  if (force === 0 && pointForce === 0) return 0;
  const mass = driven.surfaceMass;
  const nearField = (air.density * force) / (2 * omega * mass ** 2);
  const direct =
    nearField / connection.spacing + (points * air.density * pointForce) / (2 * Math.PI * air.soundSpeed * mass ** 2);
  // The strips of two limp leaves on a stud that yields are masses on a spring with no loss of their own.
  if (driven.bendingStiffness === 0) return Math.min(1, direct);
  const fed = (force * z2.re) / squaredSize(z2) / connection.spacing + (points * pointForce) / pointImpedance(driven);
  const efficiency = radiationEfficiency(hz, driven.coincidenceHz, baySize(connection.spacing, field), air);
  const radiation = (air.impedance * efficiency) / (omega * mass);
  const back = lossByStuds(driven, driving, connection, hz);
  const reverberant = (fed * radiation) / (driven.lossFactor + 2 * radiation + back);
  return Math.min(1, direct + reverberant);
}

/** Screws per m2 along studs that yield between them; none along rigid studs. */
function pointsPerArea({ spacing, compliance = 0, screwSpacing }: LineConnection): number {
  return compliance > 0 && screwSpacing !== undefined ? 1 / (spacing * screwSpacing) : 0;
}

/** Force over velocity of an unlimited plate at a point, N s/m: 8 sqrt(B m). */
function pointImpedance(leaf: Leaf): number {
  return 8 * Math.sqrt(leaf.bendingStiffness * leaf.surfaceMass);
}

/**
 * Squared force of a screw over the squared difference of the velocities that the leaves would have without studs,
 * (N s/m)^2: the screw is rigid, but the stud has evened out a part of the difference before.
 */
function pointForcePerVelocity(from: Leaf, to: Leaf, connection: LineConnection, hz: number): number {
  const { compliance = 0, width = 0 } = connection;
  const z1 = pointImpedance(from);
  const z2 = pointImpedance(to);
  if (compliance === 0 || z1 === 0 || z2 === 0) return 0;
  const omega = 2 * Math.PI * hz;
  const line = forcePerVelocity(impedanceOfLine(from, hz, width), impedanceOfLine(to, hz, width), connection, omega);
  return ((z1 * z2) / (z1 + z2)) ** 2 * Math.min(1, line * (omega * compliance) ** 2);
}

/** A bay between two studs; without a panel size it is taken as very tall, so that its ends do not count. */
function baySize(spacing: number, field: Field): { width: number; height: number } {
  if (field.kind === 'limited') return { width: spacing, height: 1000 * spacing };
  return { width: spacing, height: Math.max(field.size.width, field.size.height) };
}

/** Limits made once: the functions above are called for each stud at each frequency. */
const aboveZeroHz = { above: 0, unit: 'Hz' } as const;
const aboveZeroMetres = { above: 0, unit: 'metres' } as const;
const aboveZeroMass = { above: 0, unit: 'kg/m2' } as const;

function requireFrequency(hz: number): void {
  requireNumber('frequency', hz, aboveZeroHz);
}

function requireMass(leaf: Leaf): void {
  requireNumber('surface mass of the leaf', leaf?.surfaceMass, aboveZeroMass);
}

function requireStuds(connection: LineConnection, one: Leaf, other: Leaf, hz: number): void {
  requireNumber('spacing of studs', connection?.spacing, aboveZeroMetres);
  requireMass(one);
  requireMass(other);
  requireFrequency(hz);
}
