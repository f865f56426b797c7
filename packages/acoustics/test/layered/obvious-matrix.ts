import { all, create, type FactoryFunctionMap, type MathNumericType } from 'mathjs';
import type { Air } from '../../src/air/air-properties.js';
import type { Layer } from '../../src/layered/layer.js';

export const m = create(all as FactoryFunctionMap);
export type Value = MathNumericType;
export const mul = (...factors: Value[]): Value => factors.reduce((a, b) => m.multiply(a, b) as Value);

export const complexOf = (value: Value) => m.complex(value as never) as unknown as { re: number; im: number };
/** mathjs overflows on the way to a limit of 1. */
const tanh = (value: Value): Value => (complexOf(value).re > 100 ? 1 : (m.tanh(value as never) as Value));

/**
 * The slow and obvious way: complex 2 x 2 matrices straight from the textbook, written without the code under test.
 * `sharedShear` replaces the plate's own reduction by shear.
 */
export function obviousMatrix(
  layer: Layer,
  hz: number,
  sine: number,
  { density, soundSpeed, pressure, temperature }: Air,
  sharedShear?: number,
) {
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
      const { thickness: h, youngsModulus, poissonRatio: nu, lossFactor } = layer;
      const stiffness = (youngsModulus * h ** 3) / 12 / (1 - nu ** 2);
      // Bending and shear in series: a trace k_t meets B k_t^4 against (5/6) G h k_t^2.
      const shearModulus = layer.shearModulus ?? youngsModulus / (2 * (1 + nu));
      const soft = sharedShear ?? (6 * stiffness * (omega / soundSpeed) ** 2) / (5 * shearModulus * h);
      const yielding = 1 + soft * sine ** 2;
      const bending = m.divide(
        mul((stiffness * trace ** 4) / yielding, m.complex(1, lossFactor) as Value),
        mul(j, omega),
      );
      return series(m.add(mul(j, omega, layer.density * h), bending as Value) as Value);
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

/** Transmission coefficient of a plane wave through an obvious matrix. */
export function obviousTransmission(matrix: unknown, sine: number, impedance: number): number {
  const at = (row: number, column: number) => (matrix as { get(at: number[]): Value }).get([row, column]);
  const q = Math.sqrt(1 - sine * sine);
  const { re, im } = complexOf(
    m.add(m.add(at(0, 0), at(1, 1)), m.add(mul(at(0, 1), q / impedance), mul(at(1, 0), impedance / q))) as Value,
  );
  return 4 / (re * re + im * im);
}
