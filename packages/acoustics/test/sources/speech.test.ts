import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { weightedTotal } from '../../src/levels/weighted-total.js';
import { maleSpeechPeaks } from '../../src/sources/male-speech-peaks.js';
import { speechLevelInNoise } from '../../src/sources/speech-level-in-noise.js';
import { speechOctavesForReading } from '../../src/sources/speech-octaves-for-reading.js';
import { speechSpectrum } from '../../src/sources/speech-spectrum.js';
import { speechSpectrumAt } from '../../src/sources/speech-spectrum-at.js';
import { talkerSoundPower } from '../../src/sources/talker-sound-power.js';

const effort = fc.constantFrom('casual', 'normal', 'raised', 'loud', 'shout');
const distance = fc.double({ min: 0.05, max: 50, noNaN: true });

describe('speechSpectrumAt', () => {
  test('is the spectrum itself at 1 m and loses 6.02 dB a doubling', () => {
    fc.assert(
      fc.property(effort, distance, (voice, metres) => {
        expect(speechSpectrumAt(voice, 1)).toEqual(speechSpectrum(voice));
        const near = speechSpectrumAt(voice, metres);
        speechSpectrumAt(voice, 2 * metres).forEach((level, band) => {
          if (level === null) expect(near[band]).toBeNull();
          else expect(near[band]! - level).toBeCloseTo(20 * Math.log10(2), 9);
        });
      }),
    );
  });
  test('a louder voice at any distance is louder', () => {
    const total = (voice: 'loud' | 'shout') => weightedTotal(speechSpectrumAt(voice, 3), 'A')!;
    expect(total('shout') - total('loud')).toBeGreaterThan(6);
  });
  test('names the distance that cannot be', () => {
    expect(() => speechSpectrumAt('loud', 0)).toThrow('distance from the lips is 0');
    expect(() => speechSpectrumAt('murmur' as 'loud', 1)).toThrow('vocal effort is "murmur"');
  });
});

describe('speechOctavesForReading', () => {
  test('moves by a decibel with the reading and leaves 63 and 125 Hz unknown', () => {
    fc.assert(
      fc.property(effort, fc.double({ min: 20, max: 110, noNaN: true }), (voice, reading) => {
        const octaves = speechOctavesForReading(voice, reading, 'A');
        expect(octaves.slice(0, 2)).toEqual([null, null]);
        speechOctavesForReading(voice, reading + 1, 'A').forEach((level, octave) => {
          if (level !== null) expect(level - octaves[octave]!).toBeCloseTo(1, 9);
        });
      }),
    );
  });
  test('names the reading that is no number', () => {
    expect(() => speechOctavesForReading('loud', Number.NaN, 'A')).toThrow('reading is NaN');
  });
});

describe('speechLevelInNoise', () => {
  test('never falls with noise, and rises by less than the noise does', () => {
    const noise = fc.double({ min: 0, max: 100, noNaN: true });
    fc.assert(
      fc.property(noise, fc.double({ min: 0.01, max: 20, noNaN: true }), (level, more) => {
        const rise = speechLevelInNoise(level + more) - speechLevelInNoise(level);
        expect(rise).toBeGreaterThanOrEqual(0);
        expect(rise).toBeLessThanOrEqual(0.3 * more + 1e-9);
      }),
    );
  });
});

test('talkerSoundPower is alike for all bands, keeps unknown ones and names one that is no number', () => {
  const peaks = maleSpeechPeaks();
  talkerSoundPower(peaks).forEach((level, band) => {
    expect(level === null ? null : level - peaks[band]!).toEqual(peaks[band] === null ? null : expect.closeTo(10.8, 9));
  });
  expect(() => talkerSoundPower([60, Number.NaN])).toThrow('speech level in band 2 of 2 is NaN');
});
