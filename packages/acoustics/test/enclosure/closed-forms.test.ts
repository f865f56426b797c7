// Closed forms, derived; no published band table of a small enclosure with known build-up was found.

import { describe, expect, test } from 'vitest';
import { airProperties, boxModes, smallEnclosureLevelDifference } from '../../src/index.js';

const air = airProperties({ temperature: 20, relativeHumidity: 0.5 });

describe('small enclosure against closed forms (derived)', () => {
  test('a limp box breathes at (1/2 pi) sqrt(rho c^2 S/(m V))', () => {
    const [volume, area, mass] = [3.8, 14, 10];
    const expected = Math.sqrt((air.density * air.soundSpeed ** 2 * area) / (mass * volume)) / (2 * Math.PI);
    const [at, beside] = smallEnclosureLevelDifference({
      volume,
      air,
      hz: [expected, expected * 1.2],
      elements: [{ kind: 'wall', layers: [{ kind: 'limp-sheet', surfaceMass: mass }], area }],
    });
    expect(at).toBeLessThan(-60);
    expect(beside).toBeGreaterThan(-10);
  });
});

test('the first modes of a hard box 1.8 m x 1.2 m x 2.1 m are c/2L of its sides (common practice)', () => {
  const modes = boxModes([1.8, 1.2, 2.1], 150, air);
  expect(modes.slice(0, 2).map(({ hz }) => hz)).toEqual([air.soundSpeed / 4.2, air.soundSpeed / 3.6]);
});
