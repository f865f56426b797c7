import { airProperties } from '@boothwright/acoustics';
import { expect, it } from 'vitest';
import { perBand } from '../../src/bands/grid.js';
import { reverberationOf } from '../../src/booth/reverberation.js';

const air = airProperties({ temperature: 20, relativeHumidity: 0.5 });

/** A box of 4 m3 and 15 m2 with the same absorption at every band, in air that takes nothing. */
function uniform(alpha: number, openFace = false) {
  const surface = 15;
  const area = {
    surfaces: perBand(() => alpha * surface),
    total: perBand(() => alpha * surface),
    mean: perBand(() => alpha),
    airAttenuation: perBand(() => 0),
  };
  return reverberationOf(4, area, surface, air, openFace);
}

it('reverberationOf(...) is Sabine and Eyring above the Schroeder frequency and null below it', () => {
  const result = uniform(0.2);
  const k = (24 * Math.LN10) / air.soundSpeed;
  const eyring = (k * 4) / (-15 * Math.log(0.8));
  expect(result.validFromHz).toBeCloseTo(2000 * Math.sqrt(eyring / 4), 6);
  expect(result.eyringS.at(-1)).toBeCloseTo(eyring, 9);
  expect(result.sabineS.at(-1)).toBeCloseTo((k * 4) / 3, 9);
  // 2000 sqrt(0.192 / 4) = 438 Hz: the 400 Hz band is silent, the 500 Hz band speaks.
  expect(result.eyringS[9]).toBeNull();
  expect(result.eyringS[10]).not.toBeNull();
});

it('reverberationOf(...) moves the limit down as absorption grows', () => {
  expect(uniform(0.6).validFromHz).toBeLessThan(uniform(0.2).validFromHz);
});

it('reverberationOf(...) has no band at all for a tiled box', () => {
  expect(uniform(0.001).eyringS.every((time) => time === null)).toBe(true);
});

it('reverberationOf(...) has no time where the mean absorption passes a half, and the Schroeder frequency still', () => {
  expect(uniform(0.5).eyringS.at(-1)).not.toBeNull();
  const dry = uniform(0.51);
  expect(dry.eyringS.every((time) => time === null)).toBe(true);
  expect(dry.sabineS.every((time) => time === null)).toBe(true);
  expect(dry.validFromHz).toBeGreaterThan(100);
});

it('reverberationOf(...) has no time in a booth with an open face', () => {
  expect(uniform(0.2, true).eyringS.every((time) => time === null)).toBe(true);
});
