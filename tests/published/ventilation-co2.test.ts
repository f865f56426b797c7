// Figures are as transcribed: read in public code, the printed pages were not opened.
import { co2Generation } from '@boothwright/acoustics';
import { expect, test } from 'vitest';

test('ASTM D6245 and ASHRAE Fundamentals: 1.8 m2, 1.2 met and RQ 0.83 give off 0.00515 L/s', () => {
  expect(1e3 * co2Generation(1.8, 1.2, 0.83)).toBeCloseTo(0.00515, 5);
});
