import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { airProperties } from '../../src/air/air-properties.js';
import { airAbsorptionArea } from '../../src/rooms/air-absorption-area.js';
import { eyringTime } from '../../src/rooms/eyring-time.js';
import { receivedLevel } from '../../src/rooms/received-level.js';
import { sabineTime } from '../../src/rooms/sabine-time.js';
import { schroederFrequency } from '../../src/rooms/schroeder-frequency.js';

const air = airProperties({ temperature: 20, relativeHumidity: 0.5 });

describe('sabineTime and eyringTime', () => {
  test('meet for a vanishing absorption, and Eyring is the shorter otherwise', () => {
    fc.assert(
      fc.property(fc.double({ min: 1e-6, max: 0.999, noNaN: true }), (alpha) => {
        const ratio = eyringTime(4, 15, alpha, 0, air) / sabineTime(4, 15 * alpha, 0, air);
        expect(ratio).toBeLessThanOrEqual(1);
        expect(ratio).toBeGreaterThanOrEqual(1 - alpha);
      }),
    );
  });
  test('are infinite when nothing absorbs; Eyring is zero when everything does', () => {
    expect(sabineTime(4, 0, 0, air)).toBe(Number.POSITIVE_INFINITY);
    expect(eyringTime(4, 15, 0, 0, air)).toBe(Number.POSITIVE_INFINITY);
    expect(eyringTime(4, 15, 1, 0, air)).toBe(0);
  });
  test('the air shortens both', () => {
    expect(sabineTime(4, 2, 0.03, air)).toBeLessThan(sabineTime(4, 2, 0, air));
    expect(eyringTime(4, 15, 0.1, 0.03, air)).toBeLessThan(eyringTime(4, 15, 0.1, 0, air));
  });
  test('name the input that cannot be', () => {
    expect(() => sabineTime(0, 1, 0, air)).toThrow('room volume is 0, expected a number of cubic metres above 0');
    expect(() => sabineTime(4, -1, 0, air)).toThrow(
      'absorption area is -1, expected a number of square metres of 0 or more',
    );
    expect(() => eyringTime(4, 15, 1.2, 0, air)).toThrow('mean absorption coefficient is 1.2');
    expect(() => sabineTime(4, 1, Number.NaN, air)).toThrow('attenuation of the air is NaN');
  });
});

test('airAbsorptionArea(volume, attenuation) is 4 m V, m = attenuation / 4.343', () => {
  expect(airAbsorptionArea(10, 4.342944819)).toBeCloseTo(40, 8);
});
test('schroederFrequency(volume, time) is 1 kHz for a quarter of a second in a cubic metre', () => {
  expect(schroederFrequency(1, 0.25)).toBe(1000);
  expect(() => schroederFrequency(-1, 0.25)).toThrow('room volume is -1');
});
test('receivedLevel(outside, tl, area, absorptionArea) falls by the loss where both areas are equal', () => {
  expect(receivedLevel(64, 32, 12, 12)).toBeCloseTo(32, 12);
  expect(() => receivedLevel(64, 32, 12, 0)).toThrow('absorption area is 0');
  expect(() => receivedLevel(Number.NaN, 32, 12, 1)).toThrow(RangeError);
});
