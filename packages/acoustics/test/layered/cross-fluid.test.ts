import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { longestPhase, makeCrossFluid } from '../../src/layered/cross-fluid.js';
import { blockBytes, blockIn } from '../../src/layered/wave-block.js';
import { type Complex, complex, cosine, divide, multiply, scale, sine, squareRoot } from '../../src/math/complex.js';

const block = blockIn(new ArrayBuffer(blockBytes));
const crossFluid = makeCrossFluid(block);
const between = (min: number, max: number) => fc.double({ min, max, noNaN: true });

/** p and v behind a layer by complex functions that share nothing with the kernel but the equations. */
function expected(square: Complex, product: Complex, trace: Complex, thickness: number, k: number, q: number) {
  const along = scale(trace, k * k * (1 - q * q));
  const kz = squareRoot(complex(square.re - along.re, square.im - along.im));
  const phase = scale(kz, thickness);
  const turned = multiply(complex(0, 1), sine(phase));
  return {
    cos: cosine(phase),
    forward: multiply(turned, divide(product, kz)),
    back: multiply(turned, divide(kz, product)),
  };
}

/** What the kernel makes of a pressure of 1 and of a velocity of 1. */
function found(constants: readonly number[], k: number, q: number) {
  block.cosine[0] = block.cosine[1] = q;
  block.pressureRe[0] = block.velocityRe[1] = 1;
  block.pressureRe[1] = block.velocityRe[0] = 0;
  block.pressureIm.fill(0, 0, 2);
  block.velocityIm.fill(0, 0, 2);
  crossFluid(constants, 0, k, 2);
  const at = (re: Float64Array, im: Float64Array, i: number) => complex(re[i]!, im[i]!);
  return {
    cos: at(block.pressureRe, block.pressureIm, 0),
    back: at(block.velocityRe, block.velocityIm, 0),
    forward: at(block.pressureRe, block.pressureIm, 1),
  };
}

const distance = (a: Complex, b: Complex) => Math.hypot(a.re - b.re, a.im - b.im);

describe('makeCrossFluid(block)', () => {
  it('gives the four elements of the layer for any fluid, frequency and angle', () => {
    fc.assert(
      fc.property(
        between(1, 110),
        between(1, 3),
        between(0, 2),
        between(0.001, 0.3),
        between(0.001, 1),
        between(1, 4),
        between(0, 0.3),
        (k, index, loss, thickness, q, traceRe, traceIm) => {
          const kp = complex(k * index, -k * loss);
          const square = multiply(kp, kp);
          const product = scale(multiply(kp, complex(1.5, -0.4)), 415);
          const trace = complex(1 / traceRe, -traceIm / traceRe);
          const constants = [square.re, square.im, product.re, product.im, thickness, trace.re, trace.im, 0];
          const [is, should] = [found(constants, k, q), expected(square, product, trace, thickness, k, q)];
          // Rounding of the phase, which the reference does not keep better either, grows with it.
          const size = Math.exp(Math.abs(kp.im) * thickness * 1.5) * 1e-9;
          expect(distance(is.cos, should.cos)).toBeLessThan(size);
          expect(distance(is.forward, should.forward) / 415).toBeLessThan(size * (1 + 2 * k * thickness));
          expect(distance(is.back, should.back) * 415).toBeLessThan(size * (10 + index + loss));
        },
      ),
      { numRuns: 500 },
    );
  });

  it('divides all four by exp(decay)', () => {
    const without = found([400, -90, 9000, -800, 0.1, 1, 0, 0], 18, 0.6);
    const withIt = found([400, -90, 9000, -800, 0.1, 1, 0, 2], 18, 0.6);
    for (const name of ['cos', 'forward', 'back'] as const) {
      expect(
        distance(scale(withIt[name], Math.exp(2)), without[name]) / Math.hypot(without[name].re, without[name].im),
      ).toBeLessThan(1e-12);
    }
  });

  it('keeps the determinant 1 of a layer that is its own mirror image, also for phases of many turns', () => {
    for (const thickness of [0.01, 1, 100, 1.01 * longestPhase]) {
      const { cos, forward, back } = found([1, 0, 415, 0, thickness, 1, 0, 0], 1, 0.99);
      const determinant = multiply(cos, cos).re - multiply(forward, back).re;
      expect(determinant).toBeCloseTo(1, 10);
    }
  });

  it('reaches grazing incidence with a finite limit', () => {
    const { cos, forward, back } = found([100, 0, 4150, 0, 0.2, 1, 0, 0], 10, 0);
    expect(cos.re).toBeCloseTo(1, 12);
    // j P sin(k_z d)/k_z -> j P d
    expect(forward.im).toBeCloseTo(830, 9);
    expect(Math.hypot(back.re, back.im)).toBeLessThan(1e-12);
  });
});
