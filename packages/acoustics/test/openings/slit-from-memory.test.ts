import { describe, expect, test } from 'vitest';
import { airProperties } from '../../src/air/air-properties.js';
import { inviscidSlitTransmissionLoss, slitTransmissionLoss } from '../../src/openings/slit-transmission-loss.js';

const air = {
  ...airProperties({ temperature: 20, relativeHumidity: 0.5 }),
  density: 1.205,
  soundSpeed: 343,
  impedance: 413.315,
};

describe('formula of Gomperts and Kihlman, Acustica 18 (1967) 144, recalled from memory: a regression hint, not a published value', () => {
  const hz = [125, 250, 500, 1000, 2000, 4000];
  test.each([
    [0.001, 0.05, [2.34, 5.21, 7.88, 9.75, 7.75, 1.78]],
    [0.005, 0.1, [2.0, 4.55, 6.18, 3.42, -0.33, -0.67]],
  ])('%d m wide, %d m deep, mid-wall, diffuse field, without friction, within 0.15 dB', (gap, depth, expected) => {
    hz.forEach((f, i) => {
      expect(
        Math.abs(inviscidSlitTransmissionLoss({ gap, depth, position: 'mid' }, f, air) - expected[i]!),
      ).toBeLessThan(0.15);
    });
  });

  test('friction takes up to 1.5 dB more in the slit of 1 mm and 0.3 dB in the one of 5 mm', () => {
    hz.forEach((f) => {
      const extra = (gap: number, depth: number) =>
        slitTransmissionLoss({ gap, depth, position: 'mid' }, f, air) -
        inviscidSlitTransmissionLoss({ gap, depth, position: 'mid' }, f, air);
      expect(extra(0.001, 0.05)).toBeLessThan(1.6);
      expect(Math.abs(extra(0.005, 0.1))).toBeLessThan(0.4);
    });
  });
});
