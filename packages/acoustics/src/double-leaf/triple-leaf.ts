import type { Air } from '../air/air-properties.js';
import { ArgumentError } from '../errors/argument-error.js';
import { requireNumber } from '../errors/require-number.js';
import {
  add,
  type Complex,
  complex,
  cosine,
  divide,
  multiply,
  scale,
  sine,
  squaredSize,
  squareRoot,
} from '../math/complex.js';
import { gaussLegendre } from '../math/gauss-legendre.js';
import type { TransmissionLoss } from '../quantities/transmission-loss.js';
import { cavityStiffness, checkLeafCavity, type LeafCavity } from './leaf-cavity.js';
import { type LeafConditions, lossAtFrequencies } from './leaf-conditions.js';
import { checkWallLeaf, type WallLeaf } from './wall-leaf.js';

/**
 * The two resonances of three masses on two springs, Hz, the lower first.
 *
 * Equation: omega^2 = (A + B)/2 -+ sqrt[((A - B)/2)^2 + s1 s2/m2^2], A = s1 (1/m1 + 1/m2), B = s2 (1/m2 + 1/m3), s of
 * `cavityStiffness`. Two equal cavities and outer leaves: omega^2 = s/m1 and s/m1 + 2 s/m2.
 * Units: kg/m2. Source: mechanics (derived, exact). Valid as `doubleLeafResonance`. See also: `cavityResonances`.
 * Errors: ArgumentError for masses or cavities that cannot be.
 */
export function tripleLeafResonances(
  masses: readonly [number, number, number],
  cavities: readonly [LeafCavity, LeafCavity],
  air: Air,
): readonly [number, number] {
  masses.forEach((mass, index) => {
    requireNumber(`surface mass of leaf ${index + 1} of 3`, mass, { above: 0, unit: 'kg/m2' });
  });
  const [m1, m2, m3] = masses;
  const [s1, s2] = [cavityStiffness(cavities[0], air), cavityStiffness(cavities[1], air)];
  const a = s1 * (1 / m1 + 1 / m2);
  const b = s2 * (1 / m2 + 1 / m3);
  const upper = (a + b) / 2 + Math.hypot((a - b) / 2, Math.sqrt(s1 * s2) / m2);
  // The product of both is exact where the difference of near numbers is not.
  const product = (s1 * s2 * (m1 + m2 + m3)) / (m1 * m2 * m3);
  return [Math.sqrt(product / upper) / (2 * Math.PI), Math.sqrt(upper) / (2 * Math.PI)];
}

/** A cavity with what it loses: the loss factor is the phase of the stiffness of its air, above 0. */
export type DampedCavity = LeafCavity & { readonly lossFactor: number };

/** Leaves and the cavities between them, from outside to inside. */
export type MultiLeafWall = { readonly leaves: readonly WallLeaf[]; readonly cavities: readonly DampedCavity[] };

/**
 * Transmission loss of two, three or more leaves without connections by the chain of their impedances, dB.
 *
 * Equation: from the last face inwards Z = rho c/cos(theta); a leaf adds j omega m (1 - x^2 (1 + j eta) sin^4 theta), a
 * cavity turns Z into Zc (Z cos(kd) + j Zc sin(kd))/(Zc cos(kd) + j Z sin(kd)) and passes on the velocity. The cavity has
 * the stiffness of `cavityStiffness` times 1 + j eta; without fill its wave runs at the angle, with fill straight across.
 * tau is averaged over sin^2(theta) up to `maximumAngleDeg` with 64 Gauss points.
 * Units: SI, degrees. Source: impedance theory of multiple walls, L.L. Beranek and G.A. Work 1949 (from memory), written
 * out here. Valid below the first resonance across a cavity; `bandTransmissionLoss` treats fill by its flow resistivity
 * and a panel of finite size.
 * Errors: ArgumentError when leaves and cavities do not fit, or one of them cannot be.
 */
export function multiLeafTransmissionLoss(
  wall: MultiLeafWall,
  maximumAngleDeg: number,
  conditions: LeafConditions,
): TransmissionLoss {
  const { leaves, cavities } = wall;
  if (leaves.length < 1 || cavities.length !== leaves.length - 1) {
    throw new ArgumentError('number of cavities', cavities.length, `${leaves.length - 1}, one less than leaves`);
  }
  leaves.forEach((leaf, index) => {
    checkWallLeaf(leaf, `leaf ${index + 1} of ${leaves.length}`);
  });
  for (const cavity of cavities) {
    checkLeafCavity(cavity);
    requireNumber('loss factor of the cavity', cavity.lossFactor, { atLeast: 0, atMost: 10 });
  }
  requireNumber('largest angle of incidence', maximumAngleDeg, { above: 0, below: 90, unit: 'degrees' });
  const reach = Math.sin((maximumAngleDeg * Math.PI) / 180) ** 2;
  return lossAtFrequencies(conditions, (hz) => {
    let tau = 0;
    nodes.forEach((node, i) => {
      tau += (weights[i]! / 2) * multiLeafCoefficient(wall, hz, (reach * (1 + node)) / 2, conditions.air);
    });
    return -10 * Math.log10(tau);
  });
}

const { nodes, weights } = gaussLegendre(64);

/** Transmission coefficient at one angle given by its squared sine. */
function multiLeafCoefficient({ leaves, cavities }: MultiLeafWall, hz: number, sine2: number, air: Air): number {
  const omega = 2 * Math.PI * hz;
  const outside = complex(air.impedance / Math.sqrt(1 - sine2));
  let impedance = outside;
  // Velocity at the last face over that at the present one.
  let passed = complex(1);
  for (let i = leaves.length - 1; i >= 0; i--) {
    const { surfaceMass, criticalFrequency, lossFactor } = leaves[i]!;
    const bending = ((hz / criticalFrequency) * sine2) ** 2;
    const reactance = omega * surfaceMass;
    impedance = add(impedance, complex(reactance * bending * lossFactor, reactance * (1 - bending)));
    if (i === 0) break;
    const cavity = cavities[i - 1]!;
    const modulus = scale(complex(1, cavity.lossFactor), cavityStiffness(cavity, air) * cavity.depth);
    const across = cavity.fillDepth > 0 ? 1 : Math.sqrt(1 - sine2);
    const slowness = squareRoot(divide(complex(air.density), modulus));
    const kd = scale(slowness, omega * cavity.depth * across);
    const own = scale(divide(complex(air.density), slowness), 1 / across);
    const [c, js] = [cosine(kd), multiply(complex(0, 1), sine(kd))];
    const velocity = add(c, divide(multiply(impedance, js), own));
    const pressure = add(multiply(impedance, c), multiply(own, js));
    passed = divide(passed, velocity);
    impedance = divide(pressure, velocity);
  }
  const first: Complex = divide(scale(outside, 2), add(impedance, outside));
  return squaredSize(multiply(first, passed));
}
