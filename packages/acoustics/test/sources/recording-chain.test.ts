import { expect, test } from 'vitest';
import { weightedTotal } from '../../src/levels/weighted-total.js';
import { fullShoutReading, fullShoutSpectrum } from '../../src/sources/full-shout-spectrum.js';
import { highPassAttenuation } from '../../src/sources/high-pass-attenuation.js';
import { microphoneSelfNoiseTotal } from '../../src/sources/microphone-self-noise-total.js';
import { recordedNoiseLevel } from '../../src/sources/recorded-noise-level.js';
import { speechSpectrum } from '../../src/sources/speech-spectrum.js';

test('highPassAttenuation(hz, cutoff) is 3 dB at the cutoff and 12 dB per octave far below', () => {
  expect(highPassAttenuation(80, 80)).toBeCloseTo(10 * Math.log10(2), 9);
  expect(highPassAttenuation(1, 80) - highPassAttenuation(2, 80)).toBeCloseTo(40 * Math.log10(2), 3);
  expect(() => highPassAttenuation(0, 80)).toThrow('frequency is 0, expected');
});

test('recordedNoiseLevel(...) moves dB for dB with noise, voice and setting', () => {
  const base = { voice: 82, noise: 42, voiceSetTo: -20 };
  expect(recordedNoiseLevel(base)).toBe(-60);
  expect(recordedNoiseLevel({ ...base, voice: 76 })).toBe(-54);
  expect(() => recordedNoiseLevel({ ...base, noise: Number.NaN })).toThrow('level of the noise');
});

test('microphoneSelfNoiseTotal(level, white) is the sum over 31 thirds, each 1 dB above the one before', () => {
  // The A-weighted sum is the level, so the gap is that of the unweighted and weighted sums of a white noise.
  const weighting = (hz: number) => {
    const f2 = hz * hz;
    const r =
      (12194 ** 2 * f2 * f2) /
      ((f2 + 20.6 ** 2) * Math.sqrt((f2 + 107.7 ** 2) * (f2 + 737.9 ** 2)) * (f2 + 12194 ** 2));
    return 20 * Math.log10(r) + 2.0;
  };
  let plain = 0;
  let weighted = 0;
  for (let step = -17; step <= 13; step++) {
    plain += 10 ** (step / 10);
    weighted += 10 ** ((step + weighting(1000 * 10 ** (step / 10))) / 10);
  }
  expect(microphoneSelfNoiseTotal(12, 'white')).toBeCloseTo(12 + 10 * Math.log10(plain / weighted), 2);
});

test('fullShoutSpectrum() has the reading and the shape of the standard shout', () => {
  const full = fullShoutSpectrum();
  const standard = speechSpectrum('shout');
  expect(weightedTotal(full, 'A')).toBeCloseTo(fullShoutReading, 9);
  expect(full[4]).toBeNull();
  expect((full[13] as number) - (full[8] as number)).toBeCloseTo((standard[13] as number) - (standard[8] as number), 9);
});
