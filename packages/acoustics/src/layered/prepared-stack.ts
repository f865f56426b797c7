import type { Air } from '../air/air-properties.js';
import { type Complex, complex, divide, multiply } from '../math/complex.js';
import { criticalFrequencyOf } from '../panels/critical-frequency.js';
import { shearParameterOf } from '../panels/shear-parameter.js';
import { stiffnessOfPlate } from '../panels/stiffness-of-plate.js';
import { limpFrame } from '../porous/limp-frame.js';
import { mikiPorous } from '../porous/miki-porous.js';
import type { PorousMedium } from '../porous/porous-medium.js';
import { airGapFluid, type GapLosses } from './air-gap-fluid.js';
import type { Layer } from './layer.js';

/**
 * A stack of layers at one frequency, made ready to be evaluated at many angles.
 *
 * The wave is followed from the far side, where it is known, to the near side, where it arrives: one pair (p, v) instead
 * of a matrix, with neighbouring plates, sheets and cloths already added up, since all of them move together.
 */
export type PreparedStack = {
  /** Operations from the far side to the near side. */
  readonly operations: readonly number[];
  /** `stride` numbers per operation. */
  readonly constants: readonly number[];
  readonly wavenumber: number;
  readonly airImpedance: number;
  /** Operations in cavities that hold standing waves, see `lateralMotion`. */
  readonly inBays: readonly number[];
  /** Which operation holds which layer; -1 for a layer of no thickness. */
  readonly operationOfLayer: readonly number[];
  /** Total k d of the fluid layers, rad. */
  readonly depthPhase: number;
  /** By how much the phase across the fluid layers changes from normal to grazing incidence, rad. */
  readonly turn: number;
  /**
   * Powers computed from the waves at the near side must be multiplied by this: thick dense fibre weakens sound beyond the
   * range of numbers, so the waves are kept small on the way by what the fibre takes at normal incidence.
   */
  readonly attenuation: number;
  /**
   * Peaks over cos(theta) where the bending wave of a leaf runs along with the sound, as if air alone were on both sides: none
   * below its critical frequency.
   */
  readonly coincidences: readonly Peak[];
};

/** A resonance over cos(theta): a near-zero of the incident wave at `place` + j `halfWidth`. */
export type Peak = { readonly place: number; readonly halfWidth: number };

/** Pressure and normal velocity, and the velocity at two marked operations. */
export type WaveState = {
  pressureRe: number;
  pressureIm: number;
  velocityRe: number;
  velocityIm: number;
  markedRe: [number, number];
  markedIm: [number, number];
};

export function waveState(): WaveState {
  return { pressureRe: 0, pressureIm: 0, velocityRe: 0, velocityIm: 0, markedRe: [0, 0], markedIm: [0, 0] };
}

// Operations: what `constants` hold for each is said in `typescriptKernel` and `makeCrossFluid`.
export const series = 0;
const fluid = 1;
export const stride = 8;

/** True for a layer that takes part; layers of no thickness or mass are absent. */
export function isPresent(layer: Layer): boolean {
  switch (layer.kind) {
    case 'limp-sheet':
      return layer.surfaceMass > 0;
    case 'screen':
      return layer.flowResistance > 0;
    default:
      return layer.thickness > 0;
  }
}

/** The medium of a porous layer: Miki's, with a limp frame when its density is known. */
export function mediumOf(layer: Layer & { kind: 'porous' }, hz: number, air: Air): PorousMedium {
  const medium = mikiPorous(layer.flowResistivity, hz, air);
  return layer.density === undefined ? medium : limpFrame(medium, hz, layer.density, air);
}

/** Impedance of a cloth: its flow resistance beside its mass, because air goes through it and pushes it as well. */
export function screenImpedance(layer: Layer & { kind: 'screen' }, hz: number): Complex {
  const resistance = { re: layer.flowResistance, im: 0 };
  if (layer.surfaceMass === undefined) return resistance;
  const mass = { re: 0, im: 2 * Math.PI * hz * layer.surfaceMass };
  return divide(multiply(resistance, mass), { re: resistance.re, im: mass.im });
}

/**
 * Prepares `layers`, listed from the near side (where the sound comes from) to the far side. `losses` says what damps the
 * air gaps.
 */
export function prepareStack(layers: readonly Layer[], hz: number, air: Air, losses: GapLosses): PreparedStack {
  // Sheets that lie on each other share an operation, so that there may be fewer operations than layers.
  // Plain arrays: making typed ones of this size costs more than filling them.
  const operations: number[] = [];
  const inBays: number[] = [];
  const constants = new Array<number>(stride * layers.length).fill(0);
  const operationOfLayer = new Array<number>(layers.length).fill(-1);
  const omega = 2 * Math.PI * hz;
  const airWavenumber = omega / air.soundSpeed;
  let count = 0;
  let depthPhase = 0;
  let turn = 0;
  let takenOut = 0;
  for (let index = layers.length - 1; index >= 0; index--) {
    const layer = layers[index]!;
    if (!isPresent(layer)) continue;
    if (losses.bays?.[index] !== undefined) inBays.push(count);
    if (layer.kind === 'air-gap') {
      depthPhase += airWavenumber * layer.thickness;
      const gap = airGapFluid(layer.thickness, hz, air, losses, index);
      const at = stride * count;
      operations[count++] = fluid;
      if (gap === undefined) {
        putFluid(constants, at, complex(airWavenumber * airWavenumber), complex(omega * air.density), layer.thickness);
        constants[at + 5] = 1;
      } else {
        putFluid(constants, at, gap.square, gap.product, layer.thickness);
        constants[at + 5] = gap.trace.re;
        constants[at + 6] = gap.trace.im;
      }
      turn += turnAcross(constants, at, airWavenumber);
    } else if (layer.kind === 'porous') {
      const { characteristicImpedance, wavenumber } = mediumOf(layer, hz, air);
      const square = multiply(wavenumber, wavenumber);
      const product = multiply(characteristicImpedance, wavenumber);
      depthPhase += wavenumber.re * layer.thickness;
      const decay = Math.abs(wavenumber.im) * layer.thickness;
      takenOut += decay;
      const at = stride * count;
      operations[count++] = fluid;
      putFluid(constants, at, square, product, layer.thickness);
      constants[at + 5] = 1;
      constants[at + 7] = decay;
      turn += turnAcross(constants, at, airWavenumber);
    } else {
      if (count === 0 || operations[count - 1] !== series) operations[count++] = series;
      const at = stride * (count - 1);
      if (layer.kind === 'plate') {
        const surfaceMass = layer.thickness * layer.density;
        const stiffness = stiffnessOfPlate(layer);
        const mass = omega * surfaceMass;
        const ratio = hz / criticalFrequencyOf(surfaceMass, stiffness, air);
        const bending = mass * ratio * ratio;
        constants[at + 1]! += mass;
        if (bending > 0) {
          // Sheets that bend together share one reduction by shear: the mean, weighted with their stiffness.
          const before = -constants[at + 3]!;
          const own = shearParameterOf(layer, stiffness, hz, air);
          constants[at + 4] = (constants[at + 4]! * before + own * bending) / (before + bending);
        }
        constants[at + 2]! += bending * layer.lossFactor;
        constants[at + 3]! -= bending;
      } else if (layer.kind === 'limp-sheet') {
        constants[at + 1]! += omega * layer.surfaceMass;
      } else {
        const impedance = screenImpedance(layer, hz);
        constants[at]! += impedance.re;
        constants[at + 1]! += impedance.im;
      }
    }
    operationOfLayer[index] = count - 1;
  }
  const stack: PreparedStack = {
    operations,
    constants,
    inBays,
    wavenumber: airWavenumber,
    airImpedance: air.impedance,
    operationOfLayer,
    depthPhase,
    turn,
    attenuation: Math.exp(-2 * takenOut),
    coincidences: coincidencesOf(operations, constants, count, air.impedance),
  };
  return withLateralShare(stack, losses.lateralShare ?? 1);
}

/** Stacks of the same layers for each of several motions in their cavities; those that lose the same differ in little. */
export function stacksOfMotions(
  layers: readonly Layer[],
  hz: number,
  air: Air,
  motions: readonly { readonly losses: GapLosses; readonly share: number }[],
): readonly PreparedStack[] {
  const stacks: PreparedStack[] = [];
  let losses: GapLosses | undefined;
  let base: PreparedStack | undefined;
  for (const motion of motions) {
    if (base === undefined || losses !== motion.losses) base = prepareStack(layers, hz, air, motion.losses);
    losses = motion.losses;
    stacks.push(withLateralShare(base, motion.share));
  }
  return stacks;
}

/** A stack in whose bays sound runs sideways with another share of the squared trace than 1. */
function withLateralShare(stack: PreparedStack, share: number): PreparedStack {
  const { operations, inBays, wavenumber } = stack;
  if (share === 1 || inBays.length === 0) return stack;
  const constants = stack.constants.slice();
  for (const index of inBays) {
    constants[index * stride + 5]! *= share;
    constants[index * stride + 6]! *= share;
  }
  let turn = 0;
  for (let index = 0; index < operations.length; index++) {
    if (operations[index] === fluid) turn += turnAcross(constants, index * stride, wavenumber);
  }
  return { ...stack, constants, turn };
}

/** Where the mass and the bending of a leaf cancel: mass (1 + s sin^2(theta)) = bending sin^4(theta). */
function coincidencesOf(
  operations: readonly number[],
  constants: number[],
  count: number,
  airImpedance: number,
): readonly Peak[] {
  let found = nothing;
  for (let index = 0; index < count; index++) {
    const mass = constants[index * stride + 1]!;
    const bending = -constants[index * stride + 3]!;
    if (operations[index] !== series || !(mass > 0)) continue;
    const shear = constants[index * stride + 4]!;
    const half = mass * shear;
    if (bending > mass + half) {
      const square = (half + Math.sqrt(half * half + 4 * bending * mass)) / (2 * bending);
      const place = Math.sqrt(1 - square);
      // The resistance at the place over the slope of the reactance there.
      const slower = 1 + shear * square;
      const resistance = (constants[index * stride]! + (2 * airImpedance) / place) * slower;
      const lost = constants[index * stride + 2]! * square * square;
      const halfWidth = ((resistance + lost) * slower) / (2 * place * bending * square * (2 + shear * square));
      found = [...found, { place, halfWidth }];
    }
  }
  return found;
}

const nothing: readonly Peak[] = [];

function putFluid(constants: number[], at: number, square: Complex, product: Complex, thickness: number): void {
  constants[at] = square.re;
  constants[at + 1] = square.im;
  constants[at + 2] = product.re;
  constants[at + 3] = product.im;
  constants[at + 4] = thickness;
}

/** Change of Re(k_z) d of a fluid layer from normal to grazing incidence, rad. */
function turnAcross(constants: readonly number[], at: number, wavenumber: number): number {
  const re = constants[at]!;
  const im = constants[at + 1]!;
  const traceSquared = wavenumber * wavenumber;
  const grazing = realRoot(re - traceSquared * constants[at + 5]!, im - traceSquared * constants[at + 6]!);
  return Math.abs(realRoot(re, im) - grazing) * constants[at + 4]!;
}

/** Real part of the root of a complex number. */
function realRoot(re: number, im: number): number {
  const size = Math.sqrt(re * re + im * im);
  const larger = Math.sqrt((size + Math.abs(re)) / 2);
  return re >= 0 || larger === 0 ? larger : Math.abs(im) / (2 * larger);
}
