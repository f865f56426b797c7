import { speechSpectrum, weightedTotal } from '@boothwright/acoustics';
import type { Effort, Microphone } from '@boothwright/language';
import { describe, expect, it } from 'vitest';
import { perBand } from '../../src/bands/grid.js';
import { roomTone } from '../../src/noise/room-tone.js';
import { booth, given, session } from '../fixtures/spec-builder.js';

const halfWidth = perBand(() => 0);
const noise = perBand((band) => (band === 1 ? 47 : -20));

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
    const tone = roomTone(noise, halfWidth, microphone(), session());
    expect(tone?.dBFS.value).toBeCloseTo(-20 - (voice - 47), 4);
  });

  it('falls by 6 dB when the distance is halved', () => {
    const near = roomTone(noise, halfWidth, microphone({ distance: given(0.5) }), session());
    const far = roomTone(noise, halfWidth, microphone(), session());
    expect((far?.dBFS.value as number) - (near?.dBFS.value as number)).toBeCloseTo(6.02, 2);
  });

  it('takes 5.6 dB off a 63 Hz noise with an 80 Hz high-pass', () => {
    const filtered = roomTone(noise, halfWidth, microphone({ highPass: given(80) }), session());
    expect(filtered?.noiseAtCapsuleDbZ).toBeCloseTo(47 - 5.55, 1);
    expect(filtered?.highPassHz).toBe(80);
  });

  it('cannot fall below the noise of the microphone itself', () => {
    const silence = perBand(() => -40);
    const tone = roomTone(
      silence,
      halfWidth,
      microphone({ selfNoise: given({ decibels: 8, weighting: 'A' as const }) }),
      session(),
    );
    expect(tone?.noiseAtCapsuleDbZ).toBeCloseTo(8, 1);
  });

  it('says weighting, filter, calibration and distance in its note', () => {
    const { note } = roomTone(noise, halfWidth, microphone({ distance: given(0.2) }), session()) as { note: string };
    for (const word of ['without weighting', 'high-pass', 'normal voice', '200 mm', '-20 dBFS', '160 Hz']) {
      expect(note).toContain(word);
    }
  });

  it('says in its note when the voice rests on a figure from memory', () => {
    const note = (effort: Effort) => roomTone(noise, halfWidth, microphone(), session({ effort: given(effort) }))?.note;
    expect(note('casual')).toContain('from memory');
    expect(note('normal')).toContain('ANSI S3.5-1997 Table 3');
    expect(note('normal')).not.toContain('from memory');
  });

  it('has a range of at least the 3 dB of the talker', () => {
    const tone = roomTone(noise, halfWidth, microphone(), session());
    expect((tone?.dBFS.high as number) - (tone?.dBFS.value as number)).toBeCloseTo(3, 6);
  });

  it('has no answer when no band of the noise is known', () => {
    expect(
      roomTone(
        perBand(() => null),
        halfWidth,
        microphone(),
        session(),
      ),
    ).toBeNull();
  });
});
