import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { connectionTransmission, couplingLossFactor, lineImpedance } from '../../src/layered/frame-connection.js';
import type { Field, LineConnection } from '../../src/layered/layer.js';
import { leafAt } from '../../src/layered/leaf.js';
import { roomAir as air, board, glass, hardboard } from './stacks.js';

const field: Field = { kind: 'finite', size: { width: 4, height: 2.5 } };
const [thick, thin, pane] = [board, hardboard, glass].map((plate) => leafAt([plate], 0, air));
const rigid: LineConnection = { between: [0, 2], spacing: 0.6 };
const through = (connection: LineConnection, hz: number) =>
  connectionTransmission(connection, thick!, thin!, 1e-6, hz, air, field);
const frequency = fc.double({ min: 45, max: 5600, noNaN: true });

describe('lineImpedance(leaf, hz, contactWidth)', () => {
  it('is 2 (1 + j) m c_B of an infinite plate', () => {
    const leaf = leafAt([board], 0, air);
    const hz = 500;
    // The bending wave is as fast as sound at the critical frequency and grows with the root of frequency.
    const bendingSpeed = air.soundSpeed * Math.sqrt(hz / leaf.criticalHz);
    const found = lineImpedance(leaf, hz, 0);
    expect(found.re).toBeCloseTo(2 * leaf.surfaceMass * bendingSpeed, 6);
    expect(found.im).toBeCloseTo(found.re, 9);
  });

  it('of a limp leaf is the mass under the face of the stud', () => {
    const limp = leafAt([{ kind: 'limp-sheet', surfaceMass: 5 }], 0, air);
    expect(lineImpedance(limp, 100, 0.04)).toEqual({ re: 0, im: 2 * Math.PI * 100 * 5 * 0.04 });
    expect(lineImpedance(limp, 100, 0)).toEqual({ re: 0, im: 0 });
  });
});

describe('couplingLossFactor(from, to, connection, hz)', () => {
  it('of two equal leaves on rigid studs is c_B/(2 omega b)', () => {
    const hz = 700;
    const bendingSpeed = air.soundSpeed * Math.sqrt(hz / thick!.criticalHz);
    const found = couplingLossFactor(thick!, thick!, rigid, hz);
    expect(found).toBeCloseTo(bendingSpeed / (2 * 2 * Math.PI * hz * 0.6), 9);
  });

  it('is reciprocal: with the modal density 1/c_B of waves that meet the stud head-on, n1 eta12 = n2 eta21', () => {
    const yielding: LineConnection = { ...rigid, compliance: 2e-6 };
    for (const connection of [rigid, yielding]) {
      for (const hz of [100, 1000, 4000]) {
        const there = couplingLossFactor(thick!, pane!, connection, hz) * Math.sqrt(pane!.criticalHz);
        const back = couplingLossFactor(pane!, thick!, connection, hz) * Math.sqrt(thick!.criticalHz);
        // c_B goes with 1/sqrt(fc), so n goes with sqrt(fc).
        expect((there * thick!.criticalHz) / pane!.criticalHz / back).toBeCloseTo(1, 9);
      }
    }
  });

  it('falls with the spacing and is 0 where a leaf yields without resistance', () => {
    const near = couplingLossFactor(thick!, thin!, { ...rigid, spacing: 0.3 }, 500);
    expect(near / couplingLossFactor(thick!, thin!, rigid, 500)).toBeCloseTo(2, 9);
    const limp = leafAt([{ kind: 'limp-sheet', surfaceMass: 5 }], 0, air);
    expect(couplingLossFactor(thick!, limp, rigid, 500)).toBe(0);
  });

  it('counts what goes through the screws of a stud that yields', () => {
    const yielding: LineConnection = { ...rigid, compliance: 1e-5 };
    const screwed = { ...yielding, screwSpacing: 0.3 };
    expect(couplingLossFactor(thick!, thin!, screwed, 500)).toBeGreaterThan(
      couplingLossFactor(thick!, thin!, yielding, 500),
    );
  });
});

describe('connectionTransmission(connection, driving, driven, freeVelocity, hz, air, field)', () => {
  it('of two equal plates radiates beside the line (2/pi) rho c lambda_c v^2 with the velocity of the line', () => {
    // A loss factor of 1e9 leaves the near field alone; the line moves with half of the difference of free velocities.
    const dead = { ...thick!, lossFactor: 1e9 };
    const found = connectionTransmission(rigid, dead, dead, 1e-6, 400, air, field);
    const wavelength = air.soundSpeed / dead.criticalHz;
    const expected = ((2 / Math.PI) * air.impedance * wavelength * (1e-6 / 4)) / 0.6;
    expect(found / expected).toBeCloseTo(1, 6);
  });

  it('adds at the screws of a very soft stud the power of plates driven at points', () => {
    const dead = { ...thick!, lossFactor: 1e9 };
    const screwed: LineConnection = { ...rigid, compliance: 1e3, screwSpacing: 0.25 };
    // Two equal plates: F = 8 sqrt(B m) v/2, and rho F^2/(2 pi c m^2) = (8/pi^3) rho c lambda_c^2 (v/2)^2 per point.
    const wavelength = air.soundSpeed / dead.criticalHz;
    const expected = ((8 / Math.PI ** 3) * air.impedance * wavelength ** 2 * (1e-6 / 4)) / (0.6 * 0.25);
    expect(connectionTransmission(screwed, dead, dead, 1e-6, 400, air, field) / expected).toBeCloseTo(1, 6);
  });

  it('is that of rigid studs when they do not yield, with or without screws, and tends to it', () => {
    fc.assert(
      fc.property(frequency, (hz) => {
        expect(through({ ...rigid, compliance: 0, screwSpacing: 0.3 }, hz)).toBe(through(rigid, hz));
        expect(through({ ...rigid, compliance: 1e-12, screwSpacing: 0.3 }, hz) / through(rigid, hz)).toBeCloseTo(1, 3);
      }),
    );
  });

  it('is nothing when they yield without limit and have no screws, and that of the screws when they have', () => {
    fc.assert(
      fc.property(frequency, (hz) => {
        expect(through({ ...rigid, compliance: 1e6 }, hz) / through(rigid, hz)).toBeLessThan(1e-9);
        const soft = through({ ...rigid, compliance: 1e3, screwSpacing: 0.3 }, hz);
        const softer = through({ ...rigid, compliance: 1e6, screwSpacing: 0.3 }, hz);
        expect(soft / softer).toBeCloseTo(1, 5);
      }),
    );
  });

  it('is proportional to the squared velocity and never above 1', () => {
    const at = (velocity: number) => connectionTransmission(rigid, thick!, thin!, velocity, 500, air, field);
    expect(at(2e-6) / at(1e-6)).toBeCloseTo(2, 9);
    expect(at(1e9)).toBe(1);
    const limp = leafAt([{ kind: 'limp-sheet', surfaceMass: 5 }], 0, air);
    // Two strips of 0.2 kg/m on a spring of 1e-6 m2/N resonate here.
    const connection: LineConnection = { ...rigid, width: 0.04, compliance: 1e-6 };
    const hz = Math.sqrt(2 / (0.2 * 1e-6)) / (2 * Math.PI);
    expect(connectionTransmission(connection, limp, limp, 1e-6, hz, air, field)).toBeLessThanOrEqual(1);
  });

  it('stays the same when all lengths grow as the wavelength does', () => {
    const yielding: LineConnection = { between: [0, 2], spacing: 0.6, compliance: 2e-6, screwSpacing: 0.3 };
    fc.assert(
      fc.property(frequency, fc.double({ min: 0.3, max: 4, noNaN: true }), (hz, scale) => {
        const [a, b] = [board, hardboard].map((plate) =>
          leafAt([{ ...plate, thickness: plate.thickness * scale }], 0, air),
        );
        const wide: Field = { kind: 'finite', size: { width: 4 * scale, height: 2.5 * scale } };
        const large = { ...yielding, spacing: 0.6 * scale, screwSpacing: 0.3 * scale };
        const found = connectionTransmission(large, a!, b!, 1e-6, hz / scale, air, wide);
        expect(found / through(yielding, hz)).toBeCloseTo(1, 6);
      }),
    );
  });
});
