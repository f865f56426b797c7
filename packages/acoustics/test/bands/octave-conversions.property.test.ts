import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { octaveLevelsToThirds } from '../../src/bands/octave-levels-to-thirds.js';
import { octaveTransmissionLoss } from '../../src/bands/octave-transmission-loss.js';
import { thirdLevelsToOctaves } from '../../src/bands/third-levels-to-octaves.js';
import { sumLevels } from '../../src/levels/sum-levels.js';

const level = fc.double({ min: -40, max: 140, noNaN: true });
const known = (count: number) => fc.array(level, { minLength: count, maxLength: count });
const perhaps = fc.array(fc.option(level), { minLength: 7, maxLength: 7 });

describe('octaves and thirds', () => {
  test('an octave spectrum comes back from its thirds unchanged, unknown bands included', () => {
    fc.assert(
      fc.property(perhaps, (octaves) => {
        thirdLevelsToOctaves(octaveLevelsToThirds(octaves)).forEach((value, index) => {
          if (octaves[index] === null) expect(value).toBeNull();
          else expect(value).toBeCloseTo(octaves[index]!, 9);
        });
      }),
    );
  });
  test('octaves hold the energy of their thirds', () => {
    fc.assert(
      fc.property(known(21), (thirds) => {
        expect(sumLevels(thirdLevelsToOctaves(thirds) as number[])).toBeCloseTo(sumLevels(thirds), 9);
      }),
    );
  });
  test('the octave transmission loss lies between the lowest third and the arithmetic mean', () => {
    fc.assert(
      fc.property(known(21), (loss) => {
        octaveTransmissionLoss(loss).forEach((value, octave) => {
          const thirds = loss.slice(3 * octave, 3 * octave + 3);
          expect(value).toBeGreaterThanOrEqual(Math.min(...thirds) - 1e-9);
          expect(value).toBeLessThanOrEqual(thirds.reduce((sum, third) => sum + third, 0) / 3 + 1e-9);
        });
      }),
    );
  });
});

describe('a third left unknown', () => {
  test('makes its octave unknown and no other', () => {
    const thirds = Array.from({ length: 21 }, (_, index) => (index === 4 ? null : 50));
    expect(thirdLevelsToOctaves(thirds).map((octave) => octave === null)).toEqual([
      false,
      true,
      false,
      false,
      false,
      false,
      false,
    ]);
  });
});

describe('misuse', () => {
  test('a wrong number of bands and NaN are named', () => {
    expect(() => octaveLevelsToThirds([1, 2, 3])).toThrow('number of bands of the octave band level is 3, expected 7');
    expect(() => thirdLevelsToOctaves([...Array(20).fill(0), Number.NaN])).toThrow(
      'third-octave band level in band 21 of 21 is NaN, expected a number',
    );
    expect(() => octaveTransmissionLoss(Array(21).fill(Number.POSITIVE_INFINITY))).toThrow(RangeError);
  });
});
