import { describe, expect, test } from 'vitest';
import { soundTransmissionClass } from '../../src/ratings/sound-transmission-class.js';

describe('soundTransmissionClass', () => {
  test('takes the 16 rated bands or the 21 of the working grid, whose other bands do not count', () => {
    const rated = Array.from({ length: 16 }, (_, band) => 20 + 2 * band);
    const grid = [0, 0, 0, 0, ...rated, 0];
    expect(soundTransmissionClass(grid)).toEqual(soundTransmissionClass(rated));
  });
  test('goes below zero for less than nothing', () => {
    expect(soundTransmissionClass(Array(16).fill(-10)).stc).toBeLessThan(0);
  });
  test('rounds 34.5 up even where binary arithmetic falls short of the half', () => {
    const short = 1.1 + 2.2 + 31.2;
    expect(soundTransmissionClass(Array(16).fill(short)).rounded[0]).toBe(35);
  });
  test('names a wrong number of bands and a missing value', () => {
    expect(() => soundTransmissionClass(Array(18).fill(30))).toThrow(
      'number of bands of the transmission loss is 18, expected 21 or 16',
    );
    expect(() => soundTransmissionClass(Array(16).fill(Number.NaN))).toThrow('in band 1 of 16 is NaN');
  });
});
