import { expect, test } from 'vitest';
import { weightedTotal } from '../../src/levels/weighted-total.js';
import { microphoneSelfNoise } from '../../src/sources/microphone-self-noise.js';

test.each(['white', 'pink'] as const)(
  'microphoneSelfNoise(level, %s) has the level as its A-weighted total',
  (shape) => {
    const levels = microphoneSelfNoise(12, shape);
    expect(weightedTotal(levels, 'A')).toBeCloseTo(12, 9);
    expect(levels[1]! - levels[0]!).toBeCloseTo(shape === 'white' ? 1 : 0, 9);
  },
);
