import { describe, expect, test } from 'vitest';
import { airProperties } from '../../src/air/air-properties.js';
import { backwardIntegration } from '../../src/rooms/backward-integration.js';
import type { BoxWalls } from '../../src/rooms/box-geometry.js';
import { clarity } from '../../src/rooms/clarity.js';
import { combRipple } from '../../src/rooms/comb-ripple.js';
import { decayTimes } from '../../src/rooms/decay-times.js';
import { earlyReflections } from '../../src/rooms/early-reflections.js';
import { eyringTime } from '../../src/rooms/eyring-time.js';
import { imageEchogram } from '../../src/rooms/image-echogram.js';

const air = airProperties({ temperature: 20, relativeHumidity: 0.5 });
const all = (value: number): BoxWalls<number> => ({
  left: value,
  right: value,
  front: value,
  back: value,
  floor: value,
  ceiling: value,
});
const decay = (time: number, seconds: number, noise: number) =>
  Float64Array.from({ length: seconds * 8000 }, (_, n) => 10 ** ((-6 * n) / 8000 / time) + noise);

describe('backwardIntegration and decayTimes', () => {
  test('a pure exponential decay has EDT, T20 and T30 alike, straight', () => {
    const { edt, t20, t30, curvature } = decayTimes(backwardIntegration(decay(0.5, 2, 0), 8000, 'none'));
    for (const fit of [edt, t20, t30]) {
      expect(fit?.time).toBeCloseTo(0.5, 8);
      expect(fit?.nonLinearity).toBeLessThan(1e-6);
    }
    expect(curvature).toBeCloseTo(0, 6);
  });
  test('noise 50 dB down bends the curve, and compensation straightens it within 2 %', () => {
    const noisy = decay(0.5, 2, 1e-5);
    const plain = decayTimes(backwardIntegration(noisy, 8000, 'none'));
    const { t20, t30, curvature } = decayTimes(backwardIntegration(noisy, 8000, 'compensate'));
    expect(plain.t30?.time ?? 9).toBeGreaterThan(0.6);
    expect(Math.abs(t20!.time / 0.5 - 1)).toBeLessThan(0.02);
    expect(Math.abs(t30!.time / 0.5 - 1)).toBeLessThan(0.02);
    expect(Math.abs(curvature!)).toBeLessThan(2);
  });
  test('two slopes show as curvature', () => {
    const early = decay(0.2, 2, 0);
    const both = decay(1, 2, 0).map((value, index) => 0.01 * value + early[index]!);
    expect(decayTimes(backwardIntegration(both, 8000, 'none')).curvature).toBeGreaterThan(10);
  });
  test('a range that is not reached has no time', () => {
    const level = Float64Array.of(0, -3, -6, -9);
    expect(decayTimes({ level, sampleRate: 8000, truncatedAt: 4, noise: 0 }).edt).toBeNull();
    expect(() => backwardIntegration(new Float64Array(9), 8000, 'none')).toThrow('energy of the record is 0');
    expect(() => backwardIntegration(decay(0.5, 2, 0.1), 8000, 'compensate')).toThrow('above its noise');
  });
});

describe('imageEchogram', () => {
  const path = { size: [3, 3, 3], source: [1.1, 0.7, 1.6], receiver: [2.2, 1.9, 0.8] } as const;
  // Without scattering a box of mirror walls decays slower than Eyring says, the more so the later: near grazing
  // paths meet walls seldom.
  test.each([0.1, 0.3])('of a cube with an even coefficient of %f decays near Eyring', (alpha) => {
    const eyring = eyringTime(27, 54, alpha, 0, air);
    const echogram = imageEchogram(path, all(alpha), 0, 8000, Math.min(0.4, 1.2 * eyring), air);
    const ratio = decayTimes(backwardIntegration(echogram, 8000, 'none')).t20!.time / eyring;
    expect(ratio).toBeGreaterThan(0.85);
    expect(ratio).toBeLessThan(1.3);
  });
  test('holds the direct sound alone when the walls take all', () => {
    const echogram = imageEchogram(path, all(1), 0, 8000, 0.1, air);
    const distance = Math.hypot(1.1, 1.2, 0.8);
    expect(echogram.reduce((sum, value) => sum + value, 0)).toBeCloseTo(1 / distance ** 2, 12);
  });
});

test('clarity of an exponential decay: D50 = 1 - 10^(-6 t / T)', () => {
  const { definition, clarity: c50, centreTime } = clarity(decay(0.5, 3, 0), 8000, 0.05);
  const early = 1 - 10 ** -0.6;
  expect(definition).toBeCloseTo(early, 6);
  expect(c50).toBeCloseTo(10 * Math.log10(early / (1 - early)), 5);
  expect(centreTime).toBeCloseTo(0.5 / (6 * Math.LN10), 3);
});

describe('earlyReflections and combRipple', () => {
  const path = { size: [2, 2, 2.2], source: [1, 1, 1.5], receiver: [1, 0.6, 1.5] } as const;
  test('a floor 1.5 m below gives its path', () => {
    const list = earlyReflections(path, { ...all(0.5), floor: 0 }, 1, air);
    expect(list.length).toBe(6);
    const floor = list.find(({ walls }) => walls[0]!.wall === 'floor')!;
    const distance = Math.hypot(3, 0.4);
    expect(floor.pathDifference).toBeCloseTo(distance - 0.4, 12);
    expect(floor.level).toBeCloseTo(20 * Math.log10(0.4 / distance), 12);
    expect(floor.delay).toBeCloseTo((distance - 0.4) / air.soundSpeed, 12);
  });
  test('there are 6 reflections of the first and 18 of the second order', () => {
    expect(earlyReflections(path, all(0.1), 2, air).length).toBe(6 + 18);
  });
  test('a reflection 6.02 dB down ripples by +3.52 and -6.02 dB; 0.5 m has its dip at c', () => {
    const ripple = combRipple(20 * Math.log10(0.5), 0.5, air);
    expect(ripple.peak).toBeCloseTo(20 * Math.log10(1.5), 12);
    expect(ripple.dip).toBeCloseTo(20 * Math.log10(0.5), 12);
    expect(ripple.firstDipHz).toBeCloseTo(air.soundSpeed, 12);
    expect(() => combRipple(1, 0.5, air)).toThrow('level of the reflection is 1');
  });
});
