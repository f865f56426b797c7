import type { Air } from '../air/air-properties.js';
import { ArgumentError } from '../errors/argument-error.js';
import { requireNumber } from '../errors/require-number.js';
import { requireOneOf } from '../errors/require-one-of.js';
import { frictionOnly } from './air-gap-fluid.js';
import { type BandSampling, bandMeans } from './band-means.js';
import { checkAir } from './check-air.js';
import { expectConverged } from './diffuse-transmission-loss.js';
import { integrateOverField } from './field-integral.js';
import { waveBlock } from './kernel-in-use.js';
import { checkLayers, type Layer } from './layer.js';
import { type PreparedStack, prepareStack } from './prepared-stack.js';
import { propagateBlock } from './propagate.js';

/** What is behind the layer furthest from the room: a hard wall, or the open air. */
export type Backing = 'rigid' | 'open';

/** Surroundings of a lining: the air, and what stands behind it. */
export type AbsorptionConditions = BandSampling & {
  readonly air: Air;
  readonly backing: Backing;
};

/**
 * Absorption coefficient of a stack seen from the room in a diffuse field, 0..1 in the 21 third-octave bands.
 *
 * Layers run from outside to inside: the last one faces the room. What passes through to an open backing counts as
 * absorbed.
 * Equation: alpha = 2 Integral_0^(pi/2) (1 - |r(theta)|^2) cos theta sin theta dtheta,
 * r = (Z cos theta - rho c)/(Z cos theta + rho c), Z from the transfer matrices; mean over the band.
 * Source: common practice. Valid for a sample of infinite extent: a measured sample of a few square metres shows more, up
 * to values above 1, because sound bends in at its edges.
 * Errors: ArgumentError for a layer or air that can't be or a backing that is not known; Error when the sum over directions
 * does not converge.
 * See also: `absorberAbsorption` for samples of finite size, perforated sheets, pores by five figures and other backings.
 *
 * @example
 * ```ts
 * import { airProperties } from '@boothwright/acoustics/air';
 * import { stackAbsorption } from '@boothwright/acoustics/layered';
 *
 * const air = airProperties({ temperature: 20, relativeHumidity: 0.5 });
 * const fibre = { kind: 'porous', thickness: 0.05, flowResistivity: 10000 } as const;
 * // At 500 Hz, the eleventh third.
 * stackAbsorption([fibre], { air, backing: 'rigid' })[10]; // 0.589
 * ```
 */
export function stackAbsorption(layers: readonly Layer[], conditions: AbsorptionConditions): number[] {
  checkLayers(layers);
  checkConditions(conditions);
  const { air, backing } = conditions;
  const means = bandMeans((hz) => ({ values: [absorptionAt(layers, hz, air, backing)], converged: true }), conditions);
  return means[0]!.map((mean) => Math.min(1, mean));
}

/** The same at one frequency in Hz. Errors: as of `stackAbsorption`, and ArgumentError for a frequency not above 0. */
export function diffuseAbsorption(layers: readonly Layer[], hz: number, air: Air, backing: Backing): number {
  checkLayers(layers);
  checkConditions({ air, backing });
  requireNumber('frequency', hz, { above: 0, unit: 'Hz' });
  return absorptionAt(layers, hz, air, backing);
}

const anyDirection = [{ kind: 'limited', maximumAngleDeg: 90 }] as const;

/** The same of arguments that are known to be right. */
function absorptionAt(layers: readonly Layer[], hz: number, air: Air, backing: Backing): number {
  const stack = prepareStack(layers.toReversed(), hz, air, frictionOnly);
  const { values, converged } = integrateOverField(
    stack,
    anyDirection,
    (count) => followWavesToRoom(stack, count, backing),
    (count, out) => absorbedShares(air.impedance, count, out),
    1,
  );
  expectConverged(converged, hz);
  return Math.min(1, values[0]!);
}

/**
 * Absorption coefficient of a stack at normal incidence, 0..1, at single frequencies in Hz; see `stackAbsorption`.
 * Errors: ArgumentError for a layer or air that can't be, a backing that is not known, or a frequency not above 0.
 */
export function normalIncidenceAbsorption(
  layers: readonly Layer[],
  hz: readonly number[],
  conditions: { readonly air: Air; readonly backing: Backing },
): number[] {
  checkLayers(layers);
  checkConditions(conditions);
  const { air, backing } = conditions;
  for (const each of hz) requireNumber('frequency', each, { above: 0, unit: 'Hz' });
  const share = new Float64Array(1);
  return hz.map((frequency) => {
    waveBlock().cosine[0] = 1;
    followWavesToRoom(prepareStack(layers.toReversed(), frequency, air, frictionOnly), 1, backing);
    absorbedShares(air.impedance, 1, share);
    return share[0]!;
  });
}

function checkConditions(conditions: AbsorptionConditions): void {
  if (typeof conditions !== 'object' || conditions === null) {
    throw new ArgumentError('surroundings of the lining', conditions, 'air and backing');
  }
  checkAir(conditions.air);
  requireOneOf('backing', conditions.backing, ['rigid', 'open']);
}

/** Leaves in the block the waves at the face towards the room, for a pressure of 1 at the backing. */
function followWavesToRoom(stack: PreparedStack, count: number, backing: Backing): void {
  const { cosine, pressureRe, pressureIm, velocityRe, velocityIm } = waveBlock();
  const admittance = backing === 'rigid' ? 0 : 1 / stack.airImpedance;
  for (let i = 0; i < count; i++) {
    pressureRe[i] = 1;
    pressureIm[i] = 0;
    velocityRe[i] = cosine[i]! * admittance;
    velocityIm[i] = 0;
  }
  propagateBlock(stack, count);
}

/**
 * 1 - |r|^2 of the first `count` waves of the block, written as 4 Re(p v*) Z0/|p + Z0 v|^2, which cannot turn negative by
 * rounding.
 */
function absorbedShares(airImpedance: number, count: number, out: Float64Array): void {
  const { cosine, pressureRe, pressureIm, velocityRe, velocityIm } = waveBlock();
  for (let i = 0; i < count; i++) {
    const pr = pressureRe[i]!;
    const pi = pressureIm[i]!;
    const vr = velocityRe[i]!;
    const vi = velocityIm[i]!;
    const q = cosine[i]!;
    const re = q * pr + airImpedance * vr;
    const im = q * pi + airImpedance * vi;
    out[i] = Math.max(0, (4 * q * airImpedance * (pr * vr + pi * vi)) / (re * re + im * im));
  }
}
