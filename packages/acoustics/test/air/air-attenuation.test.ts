import { expect, test } from 'vitest';
import { airAttenuation } from '../../src/air/air-attenuation.js';
import { airProperties } from '../../src/air/air-properties.js';

const air = airProperties({ temperature: 20, relativeHumidity: 0.5 });

test('airAttenuation(hz, air) rises with frequency', () => {
  const bands = [50, 100, 500, 1000, 5000, 10000].map((hz) => airAttenuation(hz, air));
  expect(bands).toEqual([...bands].sort((a, b) => a - b));
});
test('airAttenuation(hz, air) at half the pressure and half the frequency relaxes alike', () => {
  // In the relaxation terms p and f only occur as f/p at equal h, so alpha/f depends on f/p alone.
  const low = airProperties({ temperature: 20, relativeHumidity: 0.25, pressure: 50_662.5 });
  expect(airAttenuation(500, low) / 500).toBeCloseTo(airAttenuation(1000, air) / 1000, 12);
});
test('airAttenuation(hz, air) rejects a frequency that is not above zero', () => {
  expect(() => airAttenuation(0, air)).toThrow('frequency is 0');
});
