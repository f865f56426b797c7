import { crossFluid } from './cross-fluid.js';
import { freeAir, type PreparedStack, series, stride, type WaveState } from './prepared-stack.js';
import { block } from './wave-block.js';

const kernel = makeKernel();
export const { startTransmitted, propagateBlock } = kernel;

/**
 * Follows a wave at cos(theta) = `at` through the stack, from `state` at the far side to `state` at the near side.
 * `marks` names up to two operations whose velocity is kept.
 */
export function propagate(stack: PreparedStack, at: number, state: WaveState, marks?: readonly number[]): void {
  const { cosine, pressureRe, pressureIm, velocityRe, velocityIm, firstRe, firstIm, secondRe, secondIm } = block;
  cosine[0] = at;
  pressureRe[0] = state.pressureRe;
  pressureIm[0] = state.pressureIm;
  velocityRe[0] = state.velocityRe;
  velocityIm[0] = state.velocityIm;
  propagateBlock(stack, 1, marks?.[0], marks?.[1]);
  state.pressureRe = pressureRe[0]!;
  state.pressureIm = pressureIm[0]!;
  state.velocityRe = velocityRe[0]!;
  state.velocityIm = velocityIm[0]!;
  if (marks === undefined) return;
  state.markedRe[0] = firstRe[0]!;
  state.markedIm[0] = firstIm[0]!;
  state.markedRe[1] = secondRe[0]!;
  state.markedIm[1] = secondIm[0]!;
}

// For the reason given in `makeCrossFluid` the arrays are constants of a closure.
function makeKernel() {
  const { cosine, sineSquared, pressureRe, pressureIm, velocityRe, velocityIm } = block;
  const { firstRe, firstIm, secondRe, secondIm } = block;

  /** Starts `count` transmitted waves of pressure 1 at the far side of a stack, at the cosines that stand in the block. */
  function startTransmitted(airImpedance: number, count: number): void {
    const admittance = 1 / airImpedance;
    for (let i = 0; i < count; i++) {
      pressureRe[i] = 1;
      pressureIm[i] = 0;
      velocityRe[i] = cosine[i]! * admittance;
      velocityIm[i] = 0;
    }
  }

  /**
   * Follows the first `count` waves of the block through the stack, from the far side to the near side. `first` and
   * `second` name operations whose velocity is kept; -1 for none.
   */
  function propagateBlock(stack: PreparedStack, count: number, first = -1, second = -1): void {
    const { operations, constants, wavenumber, airImpedance } = stack;
    const marked = first >= 0 || second >= 0;
    for (let i = 0; i < count; i++) sineSquared[i] = 1 - cosine[i]! * cosine[i]!;
    for (let index = 0, at = 0; index < operations.length; index++, at += stride) {
      const operation = operations[index];
      if (operation === series) {
        crossSeries(constants, at, count);
      } else if (operation === freeAir) {
        crossFreeAir(constants[at]!, airImpedance, count);
      } else {
        crossFluid(constants, at, wavenumber, count);
        const decay = constants[at + 7]!;
        if (marked && decay > 0) weakenMarks(Math.exp(-decay), count);
      }
      if (!marked) continue;
      for (let i = 0; i < count; i++) {
        if (index === first) {
          firstRe[i] = velocityRe[i]!;
          firstIm[i] = velocityIm[i]!;
        }
        if (index === second) {
          secondRe[i] = velocityRe[i]!;
          secondIm[i] = velocityIm[i]!;
        }
      }
    }
  }

  /**
   * Masses, bending stiffnesses and cloths that move together, with the five numbers of the operation a to e:
   * Z = a + j b + (c + j d) sin^4(theta)/(1 + e sin^2(theta)).
   */
  function crossSeries(constants: Float64Array, at: number, count: number): void {
    const re = constants[at]!;
    const im = constants[at + 1]!;
    const bendRe = constants[at + 2]!;
    const bendIm = constants[at + 3]!;
    const shear = constants[at + 4]!;
    for (let i = 0; i < count; i++) {
      const bend = (sineSquared[i]! * sineSquared[i]!) / (1 + shear * sineSquared[i]!);
      const zr = re + bend * bendRe;
      const zi = im + bend * bendIm;
      const vr = velocityRe[i]!;
      const vi = velocityIm[i]!;
      pressureRe[i]! += zr * vr - zi * vi;
      pressureIm[i]! += zr * vi + zi * vr;
    }
  }

  /** p' = p cos + j (Z0/q) sin v, v' = j (q/Z0) sin p + cos v, with the limit of a grazing wave kept finite. */
  function crossFreeAir(depth: number, airImpedance: number, count: number): void {
    for (let i = 0; i < count; i++) {
      const q = cosine[i]!;
      const phase = depth * q;
      const cos = Math.cos(phase);
      const sinOverCosine = q > 1e-9 ? Math.sin(phase) / q : depth;
      const forward = airImpedance * sinOverCosine;
      const back = (q * q * sinOverCosine) / airImpedance;
      const pr = pressureRe[i]!;
      const pi = pressureIm[i]!;
      const vr = velocityRe[i]!;
      const vi = velocityIm[i]!;
      pressureRe[i] = pr * cos - forward * vi;
      pressureIm[i] = pi * cos + forward * vr;
      velocityRe[i] = vr * cos - back * pi;
      velocityIm[i] = vi * cos + back * pr;
    }
  }

  /** Keeps the marked velocities in proportion to waves that were made smaller on the way. */
  function weakenMarks(factor: number, count: number): void {
    for (let i = 0; i < count; i++) {
      firstRe[i]! *= factor;
      firstIm[i]! *= factor;
      secondRe[i]! *= factor;
      secondIm[i]! *= factor;
    }
  }

  return { startTransmitted, propagateBlock };
}
