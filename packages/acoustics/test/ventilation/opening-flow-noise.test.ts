import { expect, test } from 'vitest';
import { openingFlowNoise } from '../../src/ventilation/opening-flow-noise.js';

const grille = { speed: 2.5, area: 0.04, pressure: 20 };

test('openingFlowNoise(hz, opening) peaks at 160 times the speed and falls by 3 and 5 dB an octave', () => {
  // 10 - 13.98 + 39.03 dB at 400 Hz.
  expect(openingFlowNoise(400, grille)).toBeCloseTo(35.05, 2);
  expect(openingFlowNoise(200, grille)).toBeCloseTo(32.05, 2);
  expect(openingFlowNoise(1600, grille)).toBeCloseTo(25.05, 2);
});

test('openingFlowNoise(hz, opening) rises by 60 lg of the speed where it peaks, as the pressure does with its square', () => {
  const faster = openingFlowNoise(800, { ...grille, speed: 5, pressure: 80 });
  expect(faster - openingFlowNoise(400, grille)).toBeCloseTo(60 * Math.log10(2), 10);
});

test('openingFlowNoise(hz, opening) is nothing where nothing is lost, and refuses air that stands still', () => {
  expect(openingFlowNoise(400, { ...grille, pressure: 0 })).toBe(Number.NEGATIVE_INFINITY);
  expect(() => openingFlowNoise(400, { ...grille, speed: 0 })).toThrow('air speed');
});
