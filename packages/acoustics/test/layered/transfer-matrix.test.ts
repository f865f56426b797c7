import fc from 'fast-check';
import { all, create, type FactoryFunctionMap, type MathNumericType } from 'mathjs';
import { describe, expect, it } from 'vitest';
import type { Air } from '../../src/air/air-properties.js';
import { losslessGaps } from '../../src/layered/air-gap-fluid.js';
import type { Layer } from '../../src/layered/layer.js';
import { prepareStack, waveState } from '../../src/layered/prepared-stack.js';
import { stackMatrix } from '../../src/layered/transfer-matrix.js';
import { followTransmittedWave, transmissionCoefficient } from '../../src/layered/transmission-coefficient.js';
import { bendingStiffness } from '../../src/panels/bending-stiffness.js';
import { anyFrequency, anySine, anyStack, losslessStack } from './layer-arbitraries.js';
import { roomAir as air, board, stacks } from './stacks.js';

const m = create(all as FactoryFunctionMap);
type Value = MathNumericType;
const mul = (...factors: Value[]): Value => factors.reduce((a, b) => m.multiply(a, b) as Value);

const complexOf = (value: Value) => m.complex(value as never) as unknown as { re: number; im: number };
/** mathjs overflows on the way to a limit of 1. */
const tanh = (value: Value): Value => (complexOf(value).re > 100 ? 1 : (m.tanh(value as never) as Value));

/** The slow and obvious way: complex 2 x 2 matrices straight from the textbook, written without the code under test. */
function obviousMatrix(layer: Layer, hz: number, sine: number, { density, soundSpeed, pressure, temperature }: Air) {
  const j = m.complex(0, 1);
  const omega = 2 * Math.PI * hz;
  const trace = (omega / soundSpeed) * sine;
  const series = (z: Value) =>
    m.matrix([
      [1, z],
      [0, 1],
    ] as never);
  const fluid = (rhoNormal: Value, rhoAlong: Value, bulk: Value, thickness: number) => {
    const square = m.subtract(
      m.divide(mul(omega ** 2, rhoNormal), bulk) as Value,
      m.divide(mul(trace ** 2, rhoNormal), rhoAlong) as Value,
    ) as Value;
    const k = m.sqrt(square as never) as Value;
    const z = m.divide(mul(omega, rhoNormal), k) as Value;
    const phase = mul(k, thickness);
    return m.matrix([
      [m.cos(phase as never), mul(j, z, m.sin(phase as never))],
      [m.divide(mul(j, m.sin(phase as never)), z), m.cos(phase as never)],
    ] as never);
  };
  switch (layer.kind) {
    case 'plate': {
      const stiffness = mul(bendingStiffness(layer), m.complex(1, layer.lossFactor) as Value);
      const bending = m.divide(mul(stiffness, trace ** 4), mul(j, omega)) as Value;
      return series(m.add(mul(j, omega, layer.density * layer.thickness), bending) as Value);
    }
    case 'limp-sheet':
      return series(mul(j, omega, layer.surfaceMass));
    case 'screen': {
      if (layer.surfaceMass === undefined) return series(layer.flowResistance);
      const flow = 1 / layer.flowResistance;
      return series(m.divide(1, m.add(flow, m.divide(1, mul(j, omega, layer.surfaceMass)))) as Value);
    }
    case 'air-gap': {
      const kelvin = temperature + 273.15;
      const viscosity = (1.716e-5 * (kelvin / 273.15) ** 1.5 * 383.55) / (kelvin + 110.4);
      const s = mul(layer.thickness / 2, m.sqrt(m.complex(0, (omega * density) / viscosity)) as Value);
      const slow = (x: Value) => m.divide(tanh(x), x) as Value;
      const gamma = (density * soundSpeed ** 2) / pressure;
      const along = m.divide(density, m.subtract(1, slow(s))) as Value;
      const bulk = m.divide(gamma * pressure, m.add(1, mul(gamma - 1, slow(mul(s, Math.sqrt(0.71)))))) as Value;
      return fluid(density, along, bulk, layer.thickness);
    }
    case 'porous': {
      const y = hz / layer.flowResistivity;
      const zc = mul(density * soundSpeed, m.complex(1 + 0.07 * y ** -0.632, -0.107 * y ** -0.632) as Value);
      const kc = mul(omega / soundSpeed, m.complex(1 + 0.109 * y ** -0.618, -0.16 * y ** -0.618) as Value);
      let rho = m.divide(mul(zc, kc), omega) as Value;
      const k = m.divide(mul(omega, zc), kc) as Value;
      const passive = m.complex(complexOf(k).re, Math.max(0, complexOf(k).im)) as Value;
      if (layer.density !== undefined) {
        const total = layer.density + density;
        rho = m.divide(m.subtract(mul(rho, total), density ** 2), m.add(total - 2 * density, rho)) as Value;
      }
      return fluid(rho, rho, passive, layer.thickness);
    }
  }
}

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
  it('agrees to 1e-9 with |2/(A + B q/Z0 + C Z0/q + D)|^2 of the stack matrix', () => {
    fc.assert(
      fc.property(anyStack, anyFrequency, anySine, (layers, hz, sine) => {
        const { a, b, c, d } = stackMatrix(layers, hz, sine, air);
        const q = Math.sqrt(1 - sine * sine);
        const re = a.re + (b.re * q) / air.impedance + (c.re * air.impedance) / q + d.re;
        const im = a.im + (b.im * q) / air.impedance + (c.im * air.impedance) / q + d.im;
        const expected = 4 / (re * re + im * im);
        expect(transmissionCoefficient(layers, hz, sine, air) / expected - 1).toBeCloseTo(0, 8);
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
