import { describe, expect, it } from 'vitest';
import type { Layer } from '../../src/layered/layer.js';
import { wallTransmissionLoss } from '../../src/layered/wall-transmission-loss.js';
import { radiationEfficiency } from '../../src/panels/radiation-efficiency.js';
import { complexOf, m, mul, obviousMatrix, obviousTransmission, type Value } from './obvious-matrix.js';
import { roomAir as air, batt, board, hardboard } from './stacks.js';

const limit = (78 * Math.PI) / 180;
const field = { kind: 'limited', maximumAngleDeg: 78 } as const;
const layers: Layer[] = [board, { ...batt, thickness: 0.09 }, hardboard];
const spacing = 0.6;

type Matrix = { get(at: number[]): Value };
const squared = (value: Value) => {
  const { re, im } = complexOf(value);
  return re * re + im * im;
};

/** Both paths of the wall at one frequency, written out with complex matrices and a plain sum over the angles. */
function obviousWall(hz: number, compliance: number, steps: number): { airborne: number; studs: number } {
  const omega = 2 * Math.PI * hz;
  const [outer, inner] = [board, hardboard].map(({ thickness, density, youngsModulus, poissonRatio, lossFactor }) => {
    const mass = thickness * density;
    const stiffness = (youngsModulus * thickness ** 3) / 12 / (1 - poissonRatio ** 2);
    const wave = mul(2 * mass * ((stiffness * omega ** 2) / mass) ** 0.25, m.complex(1, 1) as Value);
    // Plain bending and shear in series make coincidence sqrt(1 - s) higher.
    const critical = (air.soundSpeed ** 2 / (2 * Math.PI)) * Math.sqrt(mass / stiffness);
    const shear = (youngsModulus / (2 * (1 + poissonRatio))) * thickness * (5 / 6);
    const slow = (stiffness * ((2 * Math.PI * critical) / air.soundSpeed) ** 2) / shear;
    return { mass, lossFactor, mobility: m.divide(1, wave) as Value, coincidence: critical / Math.sqrt(1 - slow) };
  });
  const spring = m.complex(0, omega * compliance) as Value;
  const together = m.add(m.add(outer!.mobility, inner!.mobility) as Value, spring) as Value;
  const passing = (to: Value, mass: number) => complexOf(to).re / squared(together) / (omega * mass * spacing);
  const toInner = passing(inner!.mobility, outer!.mass);
  const toOuter = passing(outer!.mobility, inner!.mass);
  const damped: Layer[] = [
    { ...board, lossFactor: board.lossFactor + toInner },
    layers[1]!,
    { ...hardboard, lossFactor: hardboard.lossFactor + toOuter },
  ];
  let airborne = 0;
  let difference = 0;
  const from = Math.cos(limit);
  for (let i = 0; i < steps; i++) {
    const q = from + ((1 - from) * (i + 0.5)) / steps;
    const sine = Math.sqrt(1 - q * q);
    const matrices = damped.map((layer) => obviousMatrix(layer, hz, sine, air));
    const whole = matrices.reduce((a, b) => m.multiply(a, b));
    const behind = m.multiply(matrices[1]!, matrices[2]!) as unknown as Matrix;
    const weight = (2 * (1 - from)) / steps / Math.sin(limit) ** 2;
    const tau = obviousTransmission(whole, sine, air.impedance);
    airborne += weight * q * tau;
    // A transmitted pressure of 1 goes with q/Z0 at the inner leaf; the outer one moves as the second row of the rest says.
    const driven = q / air.impedance;
    const driving = m.add(behind.get([1, 0]), mul(behind.get([1, 1]), driven)) as Value;
    difference += weight * air.impedance * tau * squared(m.subtract(driving, driven) as Value);
  }
  const force = difference / squared(together);
  const direct = (air.density * force) / (2 * omega * inner!.mass ** 2) / spacing;
  const bay = { width: spacing, height: 1000 * spacing };
  const radiation = (air.impedance * radiationEfficiency(hz, inner!.coincidence, bay, air)) / (omega * inner!.mass);
  const fed = (force * complexOf(inner!.mobility).re) / spacing;
  return {
    airborne,
    studs: direct + (fed * radiation) / (inner!.lossFactor + 2 * radiation + toOuter),
  };
}

describe('wallTransmissionLoss(wall, { air, field }) against complex matrices written straight from the equations', () => {
  it.each([
    ['rigid', 0],
    ['yielding', 2e-6],
  ])('agrees to 0.02 dB in both paths for %s studs on a fibre-filled cavity', (_, compliance) => {
    const found = wallTransmissionLoss(
      { layers, connections: [{ between: [0, 2], spacing, compliance }] },
      { air, field, samplesPerBand: 1, stiffnessSpread: 0 },
    );
    for (const band of [3, 8, 13, 16]) {
      const expected = obviousWall(1000 * 10 ** ((band - 13) / 10), compliance, 400);
      expect(Math.abs(found.airborne[band]! + 10 * Math.log10(expected.airborne)), `band ${band}`).toBeLessThan(0.02);
      expect(Math.abs(found.connections![band]! + 10 * Math.log10(expected.studs)), `band ${band}`).toBeLessThan(0.02);
    }
  });
});
