import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { diffuseTransmission } from '../../src/layered/diffuse-transmission-loss.js';
import { grainDirections } from '../../src/layered/grain-directions.js';
import type { Layer } from '../../src/layered/layer.js';
import { wallTransmissionLoss } from '../../src/layered/wall-transmission-loss.js';
import { roomAir as air, batt, board } from './stacks.js';

const field = { kind: 'finite', size: { width: 2, height: 1.2 } } as const;
const plywood = { ...board, youngsModulus: 9e9, crossModulus: 3e9 } as const;
const modulusOf = (layer: Layer) => (layer.kind === 'plate' ? layer.youngsModulus : Number.NaN);

describe('grainDirections(layers)', () => {
  it('is one direction without grain, the layers themselves', () => {
    expect(grainDirections([board, batt])).toEqual([{ layers: [board, batt], share: 1 }]);
  });

  it('has shares that add up to 1 and moduli between those along and across', () => {
    fc.assert(
      fc.property(fc.double({ min: 1e7, max: 2e10, noNaN: true }), (crossModulus) => {
        const found = grainDirections([{ ...board, crossModulus }, batt, board]);
        expect(found.reduce((sum, { share }) => sum + share, 0)).toBeCloseTo(1, 12);
        for (const { layers } of found) {
          expect(modulusOf(layers[0]!)).toBeGreaterThanOrEqual(Math.min(crossModulus, 2.5e9) * (1 - 1e-12));
          expect(modulusOf(layers[0]!)).toBeLessThanOrEqual(Math.max(crossModulus, 2.5e9) * (1 + 1e-12));
          expect(layers.slice(1)).toEqual([batt, board]);
        }
      }),
    );
  });

  it('has the mean root of stiffness of all angles, (sqrt Ex + sqrt Ey)/2, and their mean stiffness', () => {
    const found = grainDirections([plywood]);
    const mean = (of: (modulus: number) => number) =>
      found.reduce((sum, { layers, share }) => sum + share * of(modulusOf(layers[0]!)), 0);
    expect(mean(Math.sqrt)).toBeCloseTo((Math.sqrt(9e9) + Math.sqrt(3e9)) / 2, 3);
    // cos^4 and sin^4 have a mean of 3/8, sin^2 cos^2 one of 1/8.
    expect(mean((modulus) => modulus) / ((3 / 8) * 12e9 + (2 / 8) * Math.sqrt(27) * 1e9)).toBeCloseTo(1, 6);
  });
});

describe('a wall with a grain', () => {
  it('lets through the same as an isotropic one when both moduli are the same', () => {
    const even = { ...board, crossModulus: board.youngsModulus };
    for (const hz of [100, 1000, 3150]) {
      const found = diffuseTransmission([even], hz, { air, field }).coefficient;
      expect(found / diffuseTransmission([board], hz, { air, field }).coefficient).toBeCloseTo(1, 9);
    }
    const connections = [{ between: [0, 2], spacing: 0.6 }] as const;
    const grained = wallTransmissionLoss(
      { layers: [even, batt, even], connections },
      { air, field, samplesPerBand: 1 },
    );
    const plain = wallTransmissionLoss(
      { layers: [board, batt, board], connections },
      { air, field, samplesPerBand: 1 },
    );
    for (const [band, value] of grained.total.entries()) expect(value).toBeCloseTo(plain.total[band]!, 9);
  });

  it('does not mind which of the two moduli is called the first', () => {
    const turned = { ...plywood, youngsModulus: 3e9, crossModulus: 9e9 };
    for (const hz of [500, 2000, 4000]) {
      const found = diffuseTransmission([turned], hz, { air, field }).coefficient;
      expect(found / diffuseTransmission([plywood], hz, { air, field }).coefficient).toBeCloseTo(1, 9);
    }
  });

  it('spreads the dip: less deep than that of the stiff direction at its own coincidence', () => {
    const stiff = { ...board, youngsModulus: 9e9 };
    const lowest = (layer: Layer) =>
      Math.max(...[1200, 1350, 1500, 1700].map((hz) => diffuseTransmission([layer], hz, { air, field }).coefficient));
    expect(lowest(plywood)).toBeLessThan(lowest(stiff));
  });
});
