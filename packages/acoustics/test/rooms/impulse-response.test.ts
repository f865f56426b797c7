import { describe, expect, test } from 'vitest';
import { airProperties } from '../../src/air/air-properties.js';
import { octaveBands } from '../../src/bands/bands.js';
import { backwardIntegration } from '../../src/rooms/backward-integration.js';
import type { BoxWalls } from '../../src/rooms/box-geometry.js';
import { boxImageTransfer } from '../../src/rooms/box-image-transfer.js';
import { decayTimes } from '../../src/rooms/decay-times.js';
import { filterBand } from '../../src/rooms/filter-band.js';
import { imageImpulseResponse } from '../../src/rooms/image-impulse-response.js';

const air = airProperties({ temperature: 20, relativeHumidity: 0.5 });
const all = <Value>(value: Value): BoxWalls<Value> => ({
  left: value,
  right: value,
  front: value,
  back: value,
  floor: value,
  ceiling: value,
});
const spectrum = (samples: Float64Array, sampleRate: number, hz: number) => {
  let re = 0;
  let im = 0;
  samples.forEach((value, n) => {
    re += value * Math.cos((2 * Math.PI * hz * n) / sampleRate);
    im -= value * Math.sin((2 * Math.PI * hz * n) / sampleRate);
  });
  return Math.hypot(re, im);
};

describe('filterBand(samples, sampleRate, band)', () => {
  const impulse = new Float64Array(16000);
  impulse[0] = 1;
  test.each([1, 3, 5])(
    'passes the middle of octave %i whole, its edges at -3.01 dB, an octave beyond at under -18 dB',
    (index) => {
      const band = octaveBands[index]!;
      const filtered = filterBand(impulse, 16000, band);
      const level = (hz: number) => 20 * Math.log10(spectrum(filtered, 16000, hz));
      expect(Math.abs(level(band.exact))).toBeLessThan(0.1);
      expect(level(band.lower)).toBeCloseTo(-3.01, 2);
      expect(level(band.upper)).toBeCloseTo(-3.01, 2);
      expect(level(band.lower / 2)).toBeLessThan(-18);
      expect(level(band.upper * 2)).toBeLessThan(-18);
    },
  );
  test('rejects a band above half the sample rate', () => {
    expect(() => filterBand(impulse, 8000, octaveBands[6]!)).toThrow('sample rate is 8000');
  });
  test('gives a slow decay of a band its own time', () => {
    const rate = 8000;
    const decay = Float64Array.from(
      { length: rate },
      (_, n) => Math.cos((2 * Math.PI * 500 * n) / rate) * 10 ** ((-3 * n) / rate / 0.4),
    );
    const energy = filterBand(decay, rate, octaveBands[3]!).map((value) => value * value);
    expect(decayTimes(backwardIntegration(energy, rate, 'none')).t20!.time).toBeCloseTo(0.4, 2);
  });
});

test('imageImpulseResponse has the spectrum of boxImageTransfer, within 0.1 dB to a third of the sample rate', () => {
  const path = { size: [1.8, 1.2, 2.1], source: [0.9, 0.75, 1.5], receiver: [0.7, 0.4, 1.42] } as const;
  const rate = 8000;
  // Both must hold the same images: the walls take so much that those beyond the reach are below 1e-4.
  const response = imageImpulseResponse(path, all(0.3), rate, 0.06, air);
  const hz = [100, 300, 700, 1200, 2000];
  const transfer = boxImageTransfer(
    path,
    hz,
    () => all({ kind: 'factor' as const, factor: { re: 0.3, im: 0 } }),
    () => 0,
    0.06 * air.soundSpeed,
    air,
  );
  for (const [index, { re, im }] of transfer.entries()) {
    const ratio = spectrum(response, rate, hz[index]!) / Math.hypot(re, im);
    expect(Math.abs(20 * Math.log10(ratio))).toBeLessThan(0.1);
  }
});
