import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { energyOf } from '../../src/levels/energy-of.js';
import { levelOf } from '../../src/levels/level-of.js';
import { meanLevel } from '../../src/levels/mean-level.js';
import { scaleToReading } from '../../src/levels/scale-to-reading.js';
import { sumLevels } from '../../src/levels/sum-levels.js';
import { weightedTotal } from '../../src/levels/weighted-total.js';

const level = fc.double({ min: -60, max: 160, noNaN: true });
const levels = fc.array(level, { minLength: 1, maxLength: 30 });
const spectrum = fc.array(fc.option(level), { minLength: 21, maxLength: 21 });
const weighting = fc.constantFrom('A' as const, 'C' as const, 'Z' as const);

describe('energy sums', () => {
  test('levelOf and energyOf undo each other', () => {
    fc.assert(
      fc.property(level, (value) => {
        expect(levelOf(energyOf(value))).toBeCloseTo(value, 9);
      }),
    );
  });
  test('a sum is not below its largest part, and above it by 10 lg of the count at most', () => {
    fc.assert(
      fc.property(levels, (values) => {
        const sum = sumLevels(values);
        expect(sum).toBeGreaterThanOrEqual(Math.max(...values) - 1e-9);
        expect(sum).toBeLessThanOrEqual(Math.max(...values) + 10 * Math.log10(values.length) + 1e-9);
      }),
    );
  });
  test('the order of the parts and their grouping do not matter', () => {
    fc.assert(
      fc.property(levels, levels, (left, right) => {
        const sum = sumLevels([...left, ...right]);
        expect(sumLevels([...right, ...left])).toBeCloseTo(sum, 9);
        expect(sumLevels([sumLevels(left), sumLevels(right)])).toBeCloseTo(sum, 9);
      }),
    );
  });
  test('a shift of all parts shifts sum and mean by as much', () => {
    fc.assert(
      fc.property(levels, fc.double({ min: -50, max: 50, noNaN: true }), (values, shift) => {
        const shifted = values.map((value) => value + shift);
        expect(sumLevels(shifted)).toBeCloseTo(sumLevels(values) + shift, 9);
        expect(meanLevel(shifted)).toBeCloseTo(meanLevel(values) + shift, 9);
      }),
    );
  });
});

describe('scaleToReading', () => {
  test('the scaled spectrum has the reading as its weighted total and keeps its shape', () => {
    fc.assert(
      fc.property(spectrum, fc.double({ min: 0, max: 120, noNaN: true }), weighting, (shape, reading, kind) => {
        fc.pre(shape.some((value) => value !== null));
        const scaled = scaleToReading(shape, reading, kind);
        expect(weightedTotal(scaled, kind)).toBeCloseTo(reading, 8);
        const shifts = scaled.flatMap((value, band) => (value === null ? [] : [value - shape[band]!]));
        expect(Math.max(...shifts) - Math.min(...shifts)).toBeLessThan(1e-9);
        expect(scaled.map((value) => value === null)).toEqual(shape.map((value) => value === null));
      }),
    );
  });
});
