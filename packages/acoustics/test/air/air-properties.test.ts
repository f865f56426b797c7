import { describe, expect, test } from 'vitest';
import { airProperties } from '../../src/air/air-properties.js';

describe('airProperties', () => {
  test('dry air at 20 degC has 1.2041 kg/m3 and 343.2 m/s', () => {
    const air = airProperties({ temperature: 20, relativeHumidity: 0 });
    expect(air.density).toBeCloseTo(1.2041, 4);
    expect(air.soundSpeed).toBeCloseTo(343.2, 1);
    expect(air.impedance).toBeCloseTo(air.density * air.soundSpeed, 9);
  });
  test('moist air is lighter and faster than dry air', () => {
    const dry = airProperties({ temperature: 25, relativeHumidity: 0 });
    const moist = airProperties({ temperature: 25, relativeHumidity: 1 });
    expect(moist.density).toBeLessThan(dry.density);
    expect(moist.soundSpeed).toBeGreaterThan(dry.soundSpeed);
  });
  test('the density of dry air is proportional to the pressure and the speed of sound is not', () => {
    const high = airProperties({ temperature: 20, relativeHumidity: 0, pressure: 80_000 });
    const low = airProperties({ temperature: 20, relativeHumidity: 0, pressure: 40_000 });
    expect(high.density).toBeCloseTo(2 * low.density, 12);
    expect(high.soundSpeed).toBeCloseTo(low.soundSpeed, 9);
  });
  test('says which input is out of range', () => {
    expect(() => airProperties({ temperature: Number.NaN, relativeHumidity: 0.5 })).toThrow(RangeError);
    expect(() => airProperties({ temperature: 20, relativeHumidity: 50 })).toThrow(/relative humidity is 50/);
    expect(() => airProperties({ temperature: 20, relativeHumidity: 0.5, pressure: 0 })).toThrow(/air pressure is 0/);
  });
});
