import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { airProperties } from '../../src/air/air-properties.js';
import { boxModes } from '../../src/enclosure/box-modes.js';
import { arauPuchadesTime } from '../../src/rooms/arau-puchades-time.js';
import type { BoxWalls } from '../../src/rooms/box-geometry.js';
import { boxSurfacePairs } from '../../src/rooms/box-surface-pairs.js';
import { criticalDistance } from '../../src/rooms/critical-distance.js';
import { environmentalCorrection } from '../../src/rooms/environmental-correction.js';
import { eyringTime } from '../../src/rooms/eyring-time.js';
import { fitzroyTime } from '../../src/rooms/fitzroy-time.js';
import { kuttruffTime } from '../../src/rooms/kuttruff-time.js';
import { levelInRoom } from '../../src/rooms/level-in-room.js';
import { millingtonSetteTime } from '../../src/rooms/millington-sette-time.js';
import { modalCount } from '../../src/rooms/modal-count.js';
import { modalDensity } from '../../src/rooms/modal-density.js';
import { reverberationTime } from '../../src/rooms/reverberation-time.js';
import { roomConstant } from '../../src/rooms/room-constant.js';
import { sabineConstant } from '../../src/rooms/sabine-constant.js';
import { sabineTime } from '../../src/rooms/sabine-time.js';

const air = airProperties({ temperature: 20, relativeHumidity: 0.5 });
const size = [8, 5, 3] as const;
const walls = (left: number, front: number, floor: number): BoxWalls<number> => ({
  left,
  right: left,
  front,
  back: front,
  floor,
  ceiling: floor,
});
const coefficient = fc.double({ min: 0.01, max: 0.95, noNaN: true });
const attenuation = fc.double({ min: 0, max: 0.05, noNaN: true });

describe('models of reverberation', () => {
  test('Millington-Sette, Fitzroy and Arau-Puchades are Eyring for even absorption', () => {
    fc.assert(
      fc.property(coefficient, attenuation, (alpha, m) => {
        const pairs = boxSurfacePairs(size, walls(alpha, alpha, alpha));
        const eyring = eyringTime(120, 158, alpha, m, air);
        expect(millingtonSetteTime(120, pairs.flat(), m, air) / eyring).toBeCloseTo(1, 10);
        expect(fitzroyTime(120, pairs, m, air) / eyring).toBeCloseTo(1, 10);
        expect(arauPuchadesTime(120, pairs, m, air) / eyring).toBeCloseTo(1, 10);
        expect(kuttruffTime(120, 158, alpha, 0, m, air)).toBe(eyring);
      }),
    );
  });
  test('Arau-Puchades is at most Fitzroy, at least Millington-Sette, and Millington-Sette at most Eyring', () => {
    fc.assert(
      fc.property(coefficient, coefficient, coefficient, attenuation, (a, b, c, m) => {
        const pairs = boxSurfacePairs(size, walls(a, b, c));
        const mean = pairs.flat().reduce((sum, { area, absorption }) => sum + (area * absorption) / 158, 0);
        const arau = arauPuchadesTime(120, pairs, m, air);
        const millington = millingtonSetteTime(120, pairs.flat(), m, air);
        expect(arau).toBeLessThanOrEqual(fitzroyTime(120, pairs, m, air) * (1 + 1e-12));
        expect(arau).toBeGreaterThanOrEqual(millington * (1 - 1e-12));
        expect(millington).toBeLessThanOrEqual(eyringTime(120, 158, mean, m, air) * (1 + 1e-12));
      }),
    );
  });
  test("Kuttruff lengthens Eyring by the spread of paths: 1/(1 - 0.2 a') for a variance of 0.4", () => {
    const ratio = kuttruffTime(120, 158, 0.3, 0.4, 0, air) / eyringTime(120, 158, 0.3, 0, air);
    expect(ratio).toBeCloseTo(1 / (1 + 0.2 * Math.log(0.7)), 12);
    expect(() => kuttruffTime(120, 158, 0.95, 0.4, 0, air)).toThrow('below 0.918 for a path variance of 0.4');
  });
  test('a wall that takes all makes the time of the logarithmic models of pairs zero only where it fills a pair', () => {
    expect(arauPuchadesTime(120, boxSurfacePairs(size, walls(1, 0.1, 0.1)), 0, air)).toBe(0);
    expect(fitzroyTime(120, boxSurfacePairs(size, walls(1, 0.1, 0.1)), 0, air)).toBeGreaterThan(0);
    expect(fitzroyTime(120, boxSurfacePairs(size, walls(0, 0.1, 0.1)), 0, air)).toBe(Number.POSITIVE_INFINITY);
  });
  test('say which coefficient is above 1', () => {
    const pairs = boxSurfacePairs(size, walls(0.1, 1.1, 0.1));
    expect(() => fitzroyTime(120, pairs, 0, air)).toThrow(
      'absorption of front is 1.1, expected a number of 0 or more and up to 1',
    );
    expect(() => millingtonSetteTime(120, [{ area: 2, absorption: 1.2 }], 0, air)).toThrow('surface 1 of 1');
    expect(() => millingtonSetteTime(120, [], 0, air)).toThrow('area of all surfaces is 0');
  });
});

describe('reverberationTime(volume, pairs, attenuation, air)', () => {
  const of = (a: number, b: number, c: number) => reverberationTime(120, boxSurfacePairs(size, walls(a, b, c)), 0, air);
  test('takes Sabine for little, Eyring for much even absorption, Arau-Puchades for uneven', () => {
    expect(of(0.1, 0.12, 0.1).model).toBe('sabine');
    expect(of(0.4, 0.3, 0.4).model).toBe('eyring');
    expect(of(0.05, 0.3, 0.4).model).toBe('arau-puchades');
  });
  test('keeps to Sabine for a coefficient above 1, and gives no other time', () => {
    const { model, byModel, seconds } = of(0.4, 1.05, 0.4);
    expect(model).toBe('sabine');
    expect(byModel.eyring).toBeNull();
    expect(seconds).toBeCloseTo(sabineTime(120, 0.4 * 110 + 1.05 * 48, 0, air), 12);
  });
  test('falls back on Eyring where a hard pair gives the others no finite time', () => {
    const { model, byModel, schroederHz, seconds } = of(0, 0.3, 0.4);
    expect(model).toBe('eyring');
    expect(byModel['arau-puchades']).toBe(Number.POSITIVE_INFINITY);
    expect(schroederHz).toBeCloseTo(2000 * Math.sqrt(seconds / 120), 12);
  });
});

describe('modalCount and modalDensity', () => {
  test('count the modes of a booth within 6 % plus two', () => {
    for (const hz of [200, 400, 800]) {
      const counted = boxModes([1.8, 1.2, 2.1], hz, air).length;
      expect(Math.abs(modalCount([1.8, 1.2, 2.1], hz, air) - counted)).toBeLessThan(0.06 * counted + 2);
    }
  });
  test('are curve and slope', () => {
    const slope = (modalCount(size, 300.01, air) - modalCount(size, 299.99, air)) / 0.02;
    expect(modalDensity(size, 300, air)).toBeCloseTo(slope, 6);
    expect(() => modalCount([1, 0, 1], 100, air)).toThrow('depth of the box is 0');
  });
});

describe('level in a room', () => {
  test('the direct sound is 3 dB below the whole at the critical distance', () => {
    const constant = roomConstant(158, 0.2);
    const distance = criticalDistance(2, constant);
    const direct = levelInRoom(80, distance, 2, Number.POSITIVE_INFINITY, air);
    expect(levelInRoom(80, distance, 2, constant, air) - direct).toBeCloseTo(10 * Math.log10(2), 10);
    expect(roomConstant(158, 0.2)).toBeCloseTo(39.5, 12);
  });
  test('the free field at 1 m is 11 dB below the power, but for the air', () => {
    expect(levelInRoom(80, 1, 1, Number.POSITIVE_INFINITY, { ...air, impedance: 400 })).toBeCloseTo(69.008, 3);
  });
  test('the environmental correction is 3 dB where the room absorbs four times the surface', () => {
    expect(environmentalCorrection(10, 40)).toBeCloseTo(3.0103, 4);
    expect(() => environmentalCorrection(10, 0)).toThrow('absorption area is 0');
  });
});

test('sabineConstant(air) is 0.1611 s/m at 343 m/s', () => {
  expect(sabineConstant({ soundSpeed: 343 })).toBeCloseTo(0.161114, 6);
});
describe('closed forms: 8 x 5 x 3 m, coefficient 0.2, 343 m/s', () => {
  const at343 = { ...air, soundSpeed: 343 };
  test('Sabine 0.6118246547 s, Eyring 0.5483686633 s, with m = 0.003 1/m 0.52685 s', () => {
    expect(sabineTime(120, 0.2 * 158, 0, at343)).toBeCloseTo(0.6118246547, 9);
    expect(eyringTime(120, 158, 0.2, 0, at343)).toBeCloseTo(0.5483686633, 9);
    expect(eyringTime(120, 158, 0.2, 0.003 * 10 * Math.LOG10E, at343)).toBeCloseTo(0.52685, 5);
  });
});
