import { describe, expect, test } from 'vitest';
import { ArgumentError } from '../../src/errors/argument-error.js';
import { frequencyWeighting } from '../../src/levels/frequency-weighting.js';
import { weightedTotal } from '../../src/levels/weighted-total.js';
import { microphoneSelfNoise } from '../../src/sources/microphone-self-noise.js';

describe.each(['white', 'pink'] as const)('microphoneSelfNoise(level, %s)', (shape) => {
  const levels = microphoneSelfNoise(12, shape);

  test('has the slope of its shape', () => {
    expect(levels).toHaveLength(21);
    expect(levels[1]! - levels[0]!).toBeCloseTo(shape === 'white' ? 1 : 0, 9);
  });

  test('has the level as its A-weighted total from 20 Hz to 20 kHz', () => {
    let energy = 0;
    for (let step = -17; step <= 13; step++) {
      const level = levels[13]! + (shape === 'white' ? step : 0);
      energy += 10 ** ((level + frequencyWeighting('A', 1000 * 10 ** (step / 10))) / 10);
    }
    expect(10 * Math.log10(energy)).toBeCloseTo(12, 9);
  });

  test('leaves out what lies outside the bands', () => {
    expect(12 - weightedTotal(levels, 'A')!).toBeCloseTo(shape === 'white' ? 3.1 : 0.9, 1);
  });
});

test('an unknown shape is told', () => {
  expect(() => microphoneSelfNoise(12, 'brown' as 'pink')).toThrow(ArgumentError);
  expect(() => microphoneSelfNoise(12, 'brown' as 'pink')).toThrow(
    'shape of the noise is "brown", expected white or pink',
  );
});
