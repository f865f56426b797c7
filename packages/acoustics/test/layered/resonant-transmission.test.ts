import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { diffuseTransmission } from '../../src/layered/diffuse-transmission-loss.js';
import { leafInPlace } from '../../src/layered/edge-loss.js';
import type { Field, Layer } from '../../src/layered/layer.js';
import { leafAt } from '../../src/layered/leaf.js';
import { resonantTransmission } from '../../src/layered/resonant-transmission.js';
import { wallTransmissionLoss } from '../../src/layered/wall-transmission-loss.js';
import { radiationEfficiency } from '../../src/panels/radiation-efficiency.js';
import { roomAir as air, batt, board, glass } from './stacks.js';

const size = { width: 2, height: 1.2 };
const field: Field = { kind: 'finite', size };
const leaf = leafAt([glass], 0, air);

describe('resonantTransmission(leaf, hz, air, field)', () => {
  it('is the energy balance room, plate, room, solved with modal densities and coupling loss factors', () => {
    const hz = 800;
    const omega = 2 * Math.PI * hz;
    const volume = 60;
    const area = size.width * size.height;
    const radiation = air.impedance * radiationEfficiency(hz, leaf.coincidenceHz, size, air);
    const toRoom = radiation / (omega * leaf.surfaceMass);
    const roomModes = (4 * Math.PI * volume * hz ** 2) / air.soundSpeed ** 3;
    const plateModes = (area / 2) * Math.sqrt(leaf.surfaceMass / leaf.bendingStiffness);
    const fromRoom = (toRoom * plateModes) / roomModes;
    // An energy of 1 J in the first room; what the plate takes up it loses inside and to both rooms.
    const plateEnergy = fromRoom / (leaf.lossFactor + 2 * toRoom);
    const incident = (air.soundSpeed * area) / (4 * volume);
    const expected = (omega * toRoom * plateEnergy) / incident;
    expect(resonantTransmission(leaf, hz, air, field) / expected).toBeCloseTo(1, 9);
  });

  it('is a share of power from 0 to 1, smaller with more loss', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 20, max: 6000, noNaN: true }),
        fc.double({ min: 0, max: 0.3, noNaN: true }),
        (hz, lossFactor) => {
          const found = resonantTransmission({ ...leaf, lossFactor }, hz, air, field);
          expect(found).toBeGreaterThanOrEqual(0);
          expect(found).toBeLessThanOrEqual(1);
          expect(resonantTransmission({ ...leaf, lossFactor: lossFactor + 0.1 }, hz, air, field)).toBeLessThanOrEqual(
            found,
          );
        },
      ),
    );
  });

  it('stays the same when all lengths grow as the wavelength does', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 60, max: 6000, noNaN: true }),
        fc.double({ min: 0.3, max: 4, noNaN: true }),
        (hz, scale) => {
          const large = leafAt([{ ...glass, thickness: glass.thickness * scale }], 0, air);
          const wide: Field = { kind: 'finite', size: { width: 2 * scale, height: 1.2 * scale } };
          const found = resonantTransmission(large, hz / scale, air, wide);
          expect(found).toBeCloseTo(resonantTransmission(leaf, hz, air, field), 9);
        },
      ),
    );
  });

  it('is 0 below the first mode, without stiffness, with slow shear waves and for an unlimited panel', () => {
    const small: Field = { kind: 'finite', size: { width: 0.3, height: 0.3 } };
    const first = (air.soundSpeed ** 2 / (4 * leaf.criticalHz)) * (2 / 0.09);
    expect(resonantTransmission(leaf, 0.99 * first, air, small)).toBe(0);
    expect(resonantTransmission(leaf, 1.01 * first, air, small)).toBeGreaterThan(0);
    expect(resonantTransmission(leafAt([{ ...glass, youngsModulus: 0 }], 0, air), 500, air, field)).toBe(0);
    expect(resonantTransmission(leafAt([{ ...glass, shearModulus: 1e6 }], 0, air), 500, air, field)).toBe(0);
    expect(resonantTransmission(leaf, 500, air, { kind: 'limited', maximumAngleDeg: 78 })).toBe(0);
  });

  it('says the same as the waves of an unlimited plate well above coincidence', () => {
    // The panel is large against the wave, so that its radiation factor is near that of an unlimited one.
    const large: Field = { kind: 'finite', size: { width: 20, height: 20 } };
    for (const ratio of [1.5, 2, 2.5]) {
      const thick = { ...glass, thickness: 0.02, lossFactor: 0.02 };
      const own = leafAt([thick], 0, air);
      const hz = ratio * own.coincidenceHz;
      const modes = resonantTransmission(leafInPlace(own, hz, large), hz, air, large);
      const waves = diffuseTransmission([thick], hz, { air, field: large }).coefficient;
      expect(Math.abs(10 * Math.log10(modes / waves)), `${ratio} fc`).toBeLessThan(1.5);
    }
  });
});

describe('modes in a wall of a single leaf', () => {
  const conditions = { air, field, samplesPerBand: 1 } as const;
  const of = (layers: Layer[]) => wallTransmissionLoss({ layers, connections: [] }, conditions).total;

  it('add to the waves of the layers below coincidence', () => {
    const total = of([glass]);
    for (const [band, hz] of [
      [10, 500],
      [13, 1000],
    ] as const) {
      const exact = 1000 * 10 ** ((band - 13) / 10);
      expect(Math.abs(exact / hz - 1)).toBeLessThan(0.01);
      const waves = diffuseTransmission([glass], exact, { air, field }).coefficient;
      const sum = waves + (1 - waves) * resonantTransmission(leafInPlace(leaf, exact, field), exact, air, field);
      expect(total[band]).toBeCloseTo(-10 * Math.log10(sum), 6);
    }
  });

  it('never let more through than there is, not even through a film', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 1e-5, max: 0.02, noNaN: true }),
        fc.double({ min: 20, max: 8000, noNaN: true }),
        fc.double({ min: 1e6, max: 2e11, noNaN: true }),
        (thickness, density, youngsModulus) => {
          const film: Layer = { ...board, thickness, density, youngsModulus };
          for (const value of of([film])) expect(value).toBeGreaterThan(-0.2);
        },
      ),
      { numRuns: 60 },
    );
  });

  it('let no band be better than the waves alone, and change nothing far above coincidence by more than 1.5 dB', () => {
    const thick: Layer = { ...glass, thickness: 0.03 };
    const total = of([thick]);
    total.forEach((value, band) => {
      const hz = 1000 * 10 ** ((band - 13) / 10);
      const waves = -10 * Math.log10(diffuseTransmission([thick], hz, { air, field }).coefficient);
      expect(value).toBeLessThan(waves + 1e-6);
      if (hz > 2 * leafAt([thick], 0, air).coincidenceHz) expect(waves - value).toBeLessThan(1.5);
    });
  });

  it('step by less than 3 dB where the waves take over at coincidence', () => {
    for (const plate of [glass, board]) {
      const own = leafAt([plate], 0, air);
      const loss = (hz: number) => {
        const waves = diffuseTransmission([plate], hz, { air, field }).coefficient;
        const modes = resonantTransmission(leafInPlace(own, hz, field), hz, air, field);
        return -10 * Math.log10(hz < own.coincidenceHz ? waves + modes : Math.max(waves, modes));
      };
      const step = loss(1.0001 * own.coincidenceHz) - loss(0.9999 * own.coincidenceHz);
      expect(Math.abs(step)).toBeLessThan(3);
    }
  });

  it('are weakened by a lining as much as the waves are', () => {
    const lining: Layer = { ...batt, thickness: 0.1 };
    const waves = (layers: Layer[]) => -10 * Math.log10(diffuseTransmission(layers, 1000, { air, field }).coefficient);
    const gain = of([lining, glass])[13]! - of([glass])[13]!;
    expect(gain).toBeCloseTo(waves([lining, glass]) - waves([glass]), 6);
    expect(of([glass, { kind: 'limp-sheet', surfaceMass: 0 }])[13]).toBeCloseTo(of([glass])[13]!, 9);
  });
});
