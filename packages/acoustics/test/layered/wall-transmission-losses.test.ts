import { describe, expect, it } from 'vitest';
import { airProperties } from '../../src/air/air-properties.js';
import { ArgumentError } from '../../src/errors/argument-error.js';
import type { Layer, PanelSize, Wall } from '../../src/layered/layer.js';
import { wallTransmissionLoss, wallTransmissionLosses } from '../../src/layered/wall-transmission-loss.js';

const air = airProperties({ temperature: 20, relativeHumidity: 0.5 });
const board: Layer = {
  kind: 'plate',
  thickness: 0.0125,
  density: 720,
  youngsModulus: 2.4e9,
  poissonRatio: 0.25,
  lossFactor: 0.015,
};
const plywood: Layer = { ...board, thickness: 0.012, density: 520, youngsModulus: 6e9, lossFactor: 0.02 };
const fibre: Layer = { kind: 'porous', thickness: 0.07, flowResistivity: 12_000, density: 40 };
const gap = (thickness: number): Layer => ({ kind: 'air-gap', thickness });
const cloth: Layer = { kind: 'screen', flowResistance: 200, surfaceMass: 0.3 };
const studs = (from: number, to: number) => ({ between: [from, to] as [number, number], spacing: 0.3, width: 0.045 });

const walls: Readonly<Record<string, Wall>> = {
  'one board': { layers: [board], connections: [] },
  'one board with a lining': { layers: [plywood, fibre, cloth], connections: [] },
  'wood with a grain': { layers: [{ ...plywood, crossModulus: 1e9 }], connections: [] },
  'two boards on fibre and studs': { layers: [plywood, fibre, board], connections: [studs(0, 2)] },
  'two boards on studs with nothing between': { layers: [plywood, gap(0.07), board], connections: [studs(0, 2)] },
  'two boards on air without studs': { layers: [plywood, gap(0.05), board], connections: [] },
  'two boards on fibre, air and studs with a lining': {
    layers: [plywood, fibre, gap(0.07), board, fibre, cloth],
    connections: [studs(0, 3)],
  },
  'three leaves on studs': {
    layers: [plywood, fibre, board, gap(0.045), board],
    connections: [studs(0, 2), studs(2, 4)],
  },
  'two frames that do not touch': {
    layers: [plywood, fibre, gap(0.02), board],
    connections: [],
    separateFrames: [studs(0, 3)],
  },
};
const sizes: readonly PanelSize[] = [
  { width: 2.1, height: 2 },
  { width: 1.8, height: 2 },
  { width: 2.1, height: 1.8 },
  { width: 0.66, height: 1.9 },
  { width: 0.3, height: 0.4 },
];

describe('wallTransmissionLosses(wall, conditions, sizes)', () => {
  for (const [name, wall] of Object.entries(walls)) {
    it(`is within 0.02 dB of each size alone for ${name}`, () => {
      const together = wallTransmissionLosses(wall, { air, samplesPerBand: 2 }, sizes);
      sizes.forEach((size, at) => {
        const alone = wallTransmissionLoss(wall, { air, field: { kind: 'finite', size }, samplesPerBand: 2 });
        for (const path of ['total', 'airborne', 'connections'] as const) {
          const expected = alone[path];
          const found = together[at]![path];
          expect(found === null).toBe(expected === null);
          expected?.forEach((loss, band) => {
            expect(Math.abs(found![band]! - loss)).toBeLessThan(0.02);
          });
        }
      });
    });
  }

  it('samples the bands as needed as well', () => {
    const wall = walls['two boards on fibre and studs']!;
    const [first, second] = wallTransmissionLosses(wall, { air }, sizes.slice(0, 2));
    [first, second].forEach((found, at) => {
      const alone = wallTransmissionLoss(wall, { air, field: { kind: 'finite', size: sizes[at]! } });
      alone.total.forEach((loss, band) => {
        expect(Math.abs(found!.total[band]! - loss)).toBeLessThan(0.02);
      });
    });
  });

  it('is exactly the wall for one size, and nothing for none', () => {
    const wall = walls['two boards on fibre and studs']!;
    const [size] = sizes;
    expect(wallTransmissionLosses(wall, { air, samplesPerBand: 1 }, [size!])).toEqual([
      wallTransmissionLoss(wall, { air, field: { kind: 'finite', size: size! }, samplesPerBand: 1 }),
    ]);
    expect(wallTransmissionLosses(wall, { air }, [])).toEqual([]);
  });

  it('names what cannot be', () => {
    const wall = walls['one board']!;
    expect(() => wallTransmissionLosses(wall, { air }, [sizes[0]!, { width: 0, height: 2 }])).toThrow(ArgumentError);
    expect(() => wallTransmissionLosses(wall, { air }, 3 as never)).toThrow(/a list of widths and heights/);
    expect(() => wallTransmissionLosses({ layers: [], connections: [] }, { air }, sizes)).toThrow(ArgumentError);
  });
});
