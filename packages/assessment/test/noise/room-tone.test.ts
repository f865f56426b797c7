import { microphoneSelfNoiseTotal, speechSpectrum, weightedTotal } from '@boothwright/acoustics';
import type { Effort, Microphone } from '@boothwright/language';
import { describe, expect, it } from 'vitest';
import { perBand } from '../../src/bands/grid.js';
import { bandModelsOf } from '../../src/booth/band-models.js';
import { roomTone } from '../../src/noise/room-tone.js';
import { booth, given, session } from '../fixtures/spec-builder.js';

const halfWidth = perBand(() => 0);
const silent = perBand(() => null);
const noise = { spread: perBand((band) => (band === 1 ? 47 : -20)), near: silent };
const models = bandModelsOf(60, 86, 300);

function microphone(changes: Partial<Microphone> = {}): Microphone {
  return {
    ...(booth().microphone as Microphone),
    selfNoise: undefined,
    highPass: undefined,
    distance: given(1),
    ...changes,
  };
}

describe('roomTone(noise, halfWidth, microphone, session)', () => {
  const voice = weightedTotal(speechSpectrum('normal'), 'Z') as number;

  it('is the voice setting less the difference of voice and noise, both unweighted', () => {
    const tone = roomTone(noise, halfWidth, microphone(), session(), models);
    expect(tone?.dBFS.value).toBeCloseTo(-20 - (voice - 47), 4);
  });

  it('falls by 6 dB when the distance is halved', () => {
    const near = roomTone(noise, halfWidth, microphone({ distance: given(0.5) }), session(), models);
    const far = roomTone(noise, halfWidth, microphone(), session(), models);
    expect((far?.dBFS.value as number) - (near?.dBFS.value as number)).toBeCloseTo(6.02, 2);
  });

  it('takes 5.6 dB off a 63 Hz noise with an 80 Hz high-pass', () => {
    const filtered = roomTone(noise, halfWidth, microphone({ highPass: given(80) }), session(), models);
    expect(filtered?.noiseAtCapsuleDbZ).toBeCloseTo(47 - 5.55, 1);
    expect(filtered?.highPassHz).toBe(80);
  });

  it('cannot fall below the noise of the microphone itself', () => {
    const silence = { spread: perBand(() => -40), near: silent };
    const tone = roomTone(
      silence,
      halfWidth,
      microphone({ selfNoise: given({ decibels: 8, weighting: 'A' as const }) }),
      session(),
      models,
    );
    // A white noise of 8 dBA from 20 Hz to 20 kHz is a little louder without weighting.
    expect(tone?.noiseAtCapsuleDbZ).toBeCloseTo(microphoneSelfNoiseTotal(8, 'white'), 1);
    expect(tone?.shares.microphone).toBeGreaterThan(0.95);
  });

  it('says weighting, filter, calibration and distance in its note', () => {
    const { note } = roomTone(noise, halfWidth, microphone({ distance: given(0.2) }), session(), models) as {
      note: string;
    };
    for (const word of ['without weighting', 'high-pass', 'normal voice', '200 mm', '-20 dBFS', '160 Hz']) {
      expect(note).toContain(word);
    }
  });

  it('says in its note when the voice rests on a figure from memory', () => {
    const note = (effort: Effort) =>
      roomTone(noise, halfWidth, microphone(), session({ effort: given(effort) }), models)?.note;
    expect(note('casual')).toContain('from memory');
    expect(note('normal')).toContain('ANSI S3.5-1997 Table 3');
    expect(note('normal')).not.toContain('from memory');
  });

  it('has a range of at least the 3 dB of the talker', () => {
    const tone = roomTone(noise, halfWidth, microphone(), session(), models);
    expect((tone?.dBFS.high as number) - (tone?.dBFS.value as number)).toBeCloseTo(3, 6);
  });

  it('has no answer when no band of the noise is known', () => {
    expect(roomTone({ spread: silent, near: silent }, halfWidth, microphone(), session(), models)).toBeNull();
  });

  it('takes a cardioid as 4.8 dB deaf to diffuse noise, 3 dB among few modes, and not at all in a closed box', () => {
    const cardioid = microphone({ pattern: given('cardioid' as const) });
    const at = (band: number) => {
      const one = { spread: perBand((each) => (each === band ? 60 : -40)), near: silent };
      const heard = (mic: Microphone) => roomTone(one, halfWidth, mic, session(), models)?.dBFS.value as number;
      return heard(microphone()) - heard(cardioid);
    };
    // 1 kHz is statistical, 125 Hz has few modes, 50 Hz is a closed box in these models.
    expect(at(13)).toBeCloseTo(10 * Math.log10(3), 2);
    expect(at(4)).toBeCloseTo(10 * Math.log10(2), 2);
    expect(at(0)).toBeCloseTo(0, 2);
  });

  it('takes nothing off a machine that may stand in front of the microphone', () => {
    const machine = { spread: silent, near: perBand((band) => (band === 13 ? 60 : -40)) };
    const heard = (pattern: 'omni' | 'cardioid') =>
      roomTone(machine, halfWidth, microphone({ pattern: given(pattern) }), session(), models)?.dBFS.value;
    expect(heard('cardioid')).toBe(heard('omni'));
  });

  it('tells by octave where the noise is and what other filters would do', () => {
    const tone = roomTone(noise, halfWidth, microphone(), session(), models);
    expect(tone?.shares.octaves[0]).toBeCloseTo(1, 3);
    const at = (hz: number | null) => tone?.filters.find(({ highPassHz }) => highPassHz === hz)?.dBFS as number;
    expect(at(null)).toBeCloseTo(tone?.dBFS.value as number, 9);
    // 63 Hz lies 10 lg(1 + (80/63.1)^4) down; the voice, from 160 Hz up, loses next to nothing.
    expect(at(null) - at(80)).toBeCloseTo(10 * Math.log10(1 + (80 / 63.0957) ** 4), 1);
    expect(tone?.filters.map(({ highPassHz }) => highPassHz)).toEqual([null, 80, 100, 120]);
  });

  it('reads lower with A-weighting when the noise is low', () => {
    const tone = roomTone(noise, halfWidth, microphone(), session(), models);
    expect(tone?.weightedDbFS).toBeLessThan((tone?.dBFS.value as number) - 20);
  });
});
