import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { airHeatCapacity } from '../../src/air/air-heat-capacity.js';
import { airProperties } from '../../src/air/air-properties.js';
import { condensationMargin } from '../../src/air/condensation-margin.js';
import { dewPoint } from '../../src/air/dew-point.js';
import { humidityRatio } from '../../src/air/humidity-ratio.js';
import { relativeHumidityOfVapour } from '../../src/air/relative-humidity-of-vapour.js';
import { surfaceTemperature } from '../../src/air/surface-temperature.js';
import { vapourDensity } from '../../src/air/vapour-density.js';

const temperature = fc.double({ min: -20, max: 50, noNaN: true });
const humidity = fc.double({ min: 0.01, max: 1, noNaN: true });

describe('vapourDensity', () => {
  test('relativeHumidityOfVapour undoes it', () => {
    fc.assert(
      fc.property(temperature, humidity, (degrees, relativeHumidity) => {
        const vapour = vapourDensity(airProperties({ temperature: degrees, relativeHumidity }));
        expect(relativeHumidityOfVapour(vapour, degrees)).toBeCloseTo(relativeHumidity, 12);
      }),
    );
  });
  test('is the humidity ratio times the density of the dry part', () => {
    const air = airProperties({ temperature: 22, relativeHumidity: 0.5 });
    const ratio = humidityRatio(air);
    expect(vapourDensity(air)).toBeCloseTo((ratio * air.density) / (1 + ratio), 12);
  });
  test('the same vapour is less humid in warmer air; names what cannot be', () => {
    expect(relativeHumidityOfVapour(0.01, 25)).toBeLessThan(relativeHumidityOfVapour(0.01, 20));
    expect(() => relativeHumidityOfVapour(-0.01, 20)).toThrow('water vapour is -0.01');
    expect(() => relativeHumidityOfVapour(0.01, Number.NaN)).toThrow('air temperature is NaN');
  });
});

test('airHeatCapacity of dry air is density times 1006, and lies within 2 % of it in moist air', () => {
  const dry = airProperties({ temperature: 20, relativeHumidity: 0 });
  expect(airHeatCapacity(dry)).toBeCloseTo(1006 * dry.density, 9);
  const moist = airProperties({ temperature: 25, relativeHumidity: 0.8 });
  expect(airHeatCapacity(moist) / (1006 * moist.density)).toBeGreaterThan(1);
  expect(airHeatCapacity(moist) / (1006 * moist.density)).toBeLessThan(1.02);
});

describe('surfaceTemperature', () => {
  const wall = { inside: 22, outside: 2, transmittance: 2, surfaceResistance: 0.13 };
  test('lies between both airs and falls with transmittance', () => {
    expect(surfaceTemperature(wall)).toBeCloseTo(22 - 2 * 0.13 * 20, 12);
    fc.assert(
      fc.property(
        fc.double({ min: 0.05, max: 5, noNaN: true }),
        temperature,
        temperature,
        (transmittance, inside, outside) => {
          const surface = surfaceTemperature({ ...wall, transmittance, inside, outside });
          expect(surface).toBeGreaterThanOrEqual(Math.min(inside, outside) - 1e-9);
          expect(surface).toBeLessThanOrEqual(Math.max(inside, outside) + 1e-9);
        },
      ),
    );
  });
  test('names what cannot be', () => {
    expect(() => surfaceTemperature({ ...wall, transmittance: 0 })).toThrow('thermal transmittance is 0');
    expect(() => surfaceTemperature({ ...wall, surfaceResistance: 0.6 })).toThrow('surface resistance is 0.6');
  });
});

describe('condensationMargin', () => {
  test('is zero at the dew point, and a surface as warm as the air never condenses below saturation', () => {
    fc.assert(
      fc.property(temperature, humidity, (degrees, relativeHumidity) => {
        const air = airProperties({ temperature: degrees, relativeHumidity });
        expect(condensationMargin(air, dewPoint(air))).toBe(0);
        expect(condensationMargin(air, degrees)).toBeGreaterThanOrEqual(-1e-9);
      }),
    );
  });
  test('names what cannot be', () => {
    const air = airProperties({ temperature: 20, relativeHumidity: 0.5 });
    expect(() => condensationMargin(air, Number.NaN)).toThrow('surface temperature is NaN');
    const dry = airProperties({ temperature: 20, relativeHumidity: 0 });
    expect(() => condensationMargin(dry, 10)).toThrow('relative humidity is 0');
  });
});
