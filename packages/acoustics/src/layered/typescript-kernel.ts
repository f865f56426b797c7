import { makeCrossFluid } from './cross-fluid.js';
import { type PreparedStack, series, stride } from './prepared-stack.js';
import { blockBytes, blockIn } from './wave-block.js';
import type { WaveKernel } from './wave-kernel.js';

/** The kernel in plain TypeScript, for every engine; its block lies in `buffer`. */
export function typescriptKernel(buffer = new ArrayBuffer(blockBytes)): WaveKernel {
  // For the reason given in `makeCrossFluid` the arrays are constants of a closure.
  const block = blockIn(buffer);
  const crossFluid = makeCrossFluid(block);
  const { cosine, pressureRe, pressureIm, velocityRe, velocityIm } = block;
  const { firstRe, firstIm, secondRe, secondIm } = block;

  function propagateBlock(stack: PreparedStack, count: number, first = -1, second = -1): void {
    const { operations, constants, wavenumber } = stack;
    const marked = first >= 0 || second >= 0;
    for (let index = 0, at = 0; index < operations.length; index++, at += stride) {
      if (operations[index] === series) {
        crossSeries(constants, at, count);
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
  function crossSeries(constants: readonly number[], at: number, count: number): void {
    const re = constants[at]!;
    const im = constants[at + 1]!;
    const bendRe = constants[at + 2]!;
    const bendIm = constants[at + 3]!;
    const shear = constants[at + 4]!;
    for (let i = 0; i < count; i++) {
      const sineSquared = 1 - cosine[i]! * cosine[i]!;
      const bend = (sineSquared * sineSquared) / (1 + shear * sineSquared);
      const zr = re + bend * bendRe;
      const zi = im + bend * bendIm;
      const vr = velocityRe[i]!;
      const vi = velocityIm[i]!;
      pressureRe[i]! += zr * vr - zi * vi;
      pressureIm[i]! += zr * vi + zi * vr;
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

  return { block, propagateBlock };
}
