import { expect, test } from 'vitest';
import { airProperties } from '../../src/air/air-properties.js';
import { dewPoint } from '../../src/air/dew-point.js';
import { humidityRatio } from '../../src/air/humidity-ratio.js';

test('dewPoint(air) cools the air to saturation at the same vapour pressure', () => {
  const air = airProperties({ temperature: 23, relativeHumidity: 0.5 });
  const cold = airProperties({ temperature: dewPoint(air), relativeHumidity: 1 });
  expect(humidityRatio(cold)).toBeCloseTo(humidityRatio(air), 12);
  expect(dewPoint(airProperties({ temperature: 23, relativeHumidity: 1 }))).toBeCloseTo(23, 9);
  expect(() => dewPoint(airProperties({ temperature: 23, relativeHumidity: 0 }))).toThrow('relative humidity is 0');
});
