import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { losslessGaps } from '../../src/layered/air-gap-fluid.js';
import type { Layer } from '../../src/layered/layer.js';
import { prepareStack, waveState } from '../../src/layered/prepared-stack.js';
import { stackMatrix } from '../../src/layered/transfer-matrix.js';
import { followTransmittedWave, transmissionCoefficient } from '../../src/layered/transmission-coefficient.js';
import { bendingStiffness } from '../../src/panels/bending-stiffness.js';
import { shearParameter } from '../../src/panels/shear-parameter.js';
import { anyFrequency, anySine, anyStack, losslessStack } from './layer-arbitraries.js';
import { m, obviousMatrix, obviousTransmission } from './obvious-matrix.js';
import { roomAir as air, board, stacks } from './stacks.js';

const parts = (value: { re: number; im: number }) => [value.re, value.im];

describe('stackMatrix(layers, hz, sinTheta, air)', () => {
  it('agrees to 1e-9 with complex matrices written straight from the textbook', () => {
    fc.assert(
      fc.property(anyStack, anyFrequency, anySine, (layers, hz, sine) => {
        const fast = stackMatrix(layers, hz, sine, air);
        const slow = layers
          .map((layer) => obviousMatrix(layer, hz, sine, air))
          .reduce((a, b) => m.multiply(a, b)) as unknown as { get(at: number[]): { re: number; im: number } | number };
        // Each element is compared against the size of the matrix row it is added up from.
        const elements = [fast.a, fast.b, fast.c, fast.d];
        [
          [0, 0],
          [0, 1],
          [1, 0],
          [1, 1],
        ].forEach((at, index) => {
          const value = slow.get(at);
          const expected = typeof value === 'number' ? { re: value, im: 0 } : value;
          const size = Math.hypot(expected.re, expected.im) + 1e-6;
          const found = elements[index]!;
          expect(Math.hypot(found.re - expected.re, found.im - expected.im) / size).toBeLessThan(1e-9);
        });
      }),
      { numRuns: 300 },
    );
  });

  it('has a determinant of 1', () => {
    for (const layers of Object.values(stacks)) {
      const { a, b, c, d } = stackMatrix(layers, 400, 0.6, air);
      const re = a.re * d.re - a.im * d.im - (b.re * c.re - b.im * c.im);
      const im = a.re * d.im + a.im * d.re - (b.re * c.im + b.im * c.re);
      const size = Math.hypot(...parts(a)) * Math.hypot(...parts(d)) + 1;
      expect(Math.abs(re - 1) / size).toBeLessThan(1e-9);
      expect(Math.abs(im) / size).toBeLessThan(1e-9);
    }
  });

  it('takes layers of no thickness or mass as absent', () => {
    const with_ = stackMatrix(
      [
        board,
        { kind: 'air-gap', thickness: 0 },
        { kind: 'limp-sheet', surfaceMass: 0 },
        { kind: 'porous', thickness: 0, flowResistivity: 9000 },
        { kind: 'screen', flowResistance: 0 },
        { ...board, thickness: 0 },
      ],
      500,
      0.5,
      air,
    );
    expect(with_).toEqual(stackMatrix([board], 500, 0.5, air));
  });

  it('names the layer that cannot exist', () => {
    expect(() => stackMatrix([board, { kind: 'air-gap', thickness: -0.01 }], 500, 0, air)).toThrow(
      'layer 2: thickness is -0.01, expected a number of metres of 0 or more',
    );
    expect(() => stackMatrix([{ ...board, density: 0 }], 500, 0, air)).toThrow('layer 1: plate density is 0');
  });
});

describe('transmissionCoefficient(layers, hz, sinTheta, air)', () => {
  it('agrees to 1e-8 with |2/(A + B q/Z0 + C Z0/q + D)|^2 of matrices written straight from the textbook', () => {
    fc.assert(
      fc.property(anyStack, anyFrequency, anySine, (layers, hz, sine) => {
        const matrix = layers
          .map((layer, index) => obviousMatrix(layer, hz, sine, air, sharedShear(layers, index, hz)))
          .reduce((a, b) => m.multiply(a, b));
        const expected = obviousTransmission(matrix, sine, air.impedance);
        expect(Math.abs(transmissionCoefficient(layers, hz, sine, air) / expected - 1)).toBeLessThan(1e-8);
      }),
      { numRuns: 300 },
    );
  });

  it('is the same from either side', () => {
    fc.assert(
      fc.property(anyStack, anyFrequency, anySine, (layers, hz, sine) => {
        const there = transmissionCoefficient(layers, hz, sine, air);
        const back = transmissionCoefficient(layers.toReversed(), hz, sine, air);
        expect(back / there - 1).toBeCloseTo(0, 7);
      }),
    );
  });

  it('sends on and sends back no more than what comes in', () => {
    fc.assert(
      fc.property(anyStack, anyFrequency, anySine, (layers, hz, sine) => {
        expect(balance(layers, hz, sine, { friction: true })).toBeLessThan(1 + 1e-9);
      }),
    );
  });

  it('sends on and sends back exactly what comes in when nothing is lossy', () => {
    fc.assert(
      fc.property(losslessStack, anyFrequency, anySine, (layers, hz, sine) => {
        expect(balance(layers, hz, sine, losslessGaps)).toBeCloseTo(1, 6);
      }),
    );
  });

  it('of a limp sheet at normal incidence is 1/(1 + (omega m/2 rho c)^2)', () => {
    const found = transmissionCoefficient([{ kind: 'limp-sheet', surfaceMass: 10 }], 500, 0, air);
    expect(found).toBeCloseTo(1 / (1 + ((Math.PI * 500 * 10) / air.impedance) ** 2), 12);
  });

  it('of no layers at all is 1', () => {
    expect(transmissionCoefficient([], 500, 0.7, air)).toBeCloseTo(1, 12);
  });
});

/** Sheets that lie on each other share one reduction by shear: the mean, weighted with their stiffness. */
function sharedShear(layers: readonly Layer[], index: number, hz: number): number | undefined {
  const isFluid = (layer: Layer) => layer.kind === 'air-gap' || layer.kind === 'porous';
  const before = layers.slice(0, index).findLastIndex(isFluid);
  const behind = layers.findIndex((layer, i) => i > index && isFluid(layer));
  let stiffness = 0;
  let sum = 0;
  for (const layer of layers.slice(before + 1, behind < 0 ? layers.length : behind)) {
    if (layer.kind !== 'plate') continue;
    stiffness += bendingStiffness(layer);
    sum += bendingStiffness(layer) * shearParameter(layer, hz, air);
  }
  return stiffness > 0 ? sum / stiffness : undefined;
}

/** Transmitted plus reflected share of the power of a plane wave. */
function balance(layers: readonly Layer[], hz: number, sine: number, losses: { friction: boolean }): number {
  const q = Math.sqrt(1 - sine * sine);
  const state = waveState();
  const stack = prepareStack(layers, hz, air, losses);
  followTransmittedWave(stack, q, state);
  const z = air.impedance / q;
  const incident = Math.hypot(state.pressureRe + z * state.velocityRe, state.pressureIm + z * state.velocityIm);
  const reflected = Math.hypot(state.pressureRe - z * state.velocityRe, state.pressureIm - z * state.velocityIm);
  return (reflected / incident) ** 2 + stack.attenuation * (2 / incident) ** 2;
}
