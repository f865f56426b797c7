import { expect, it } from 'vitest';
import { highPassAttenuation } from '../../src/noise/high-pass.js';

it('highPassAttenuation(hz, cutoff) of a second-order filter is 3 dB at its cutoff and 12 dB per octave below', () => {
  expect(highPassAttenuation(80, 80)).toBeCloseTo(3.01, 2);
  expect(highPassAttenuation(63, 80)).toBeCloseTo(5.56, 2);
  expect(highPassAttenuation(125, 80)).toBeCloseTo(0.67, 2);
  expect(highPassAttenuation(1, 80) - highPassAttenuation(2, 80)).toBeCloseTo(12.04, 2);
});
