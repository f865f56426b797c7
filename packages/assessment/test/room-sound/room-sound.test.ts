import { describe, expect, it } from 'vitest';
import { faceNames } from '../../src/booth/geometry.js';
import { assess, onlyBooth, onlyVerdict } from '../fixtures/assessed.js';
import {
  booth,
  given,
  lining,
  place,
  requirement,
  session,
  sheet,
  shell,
  slab,
  spec,
  wool,
} from '../fixtures/spec-builder.js';

const lined = (depth: number) =>
  booth(slab, { linings: [lining(['left', 'right', 'back', 'front'], 1, sheet(wool, depth))] });
const soundOf = (text: Parameters<typeof onlyBooth>[0]) => onlyBooth(text).roomSound!;
const at = (sound: ReturnType<typeof soundOf>, band: number) => sound.decay[band]!;
/** Places of 125 Hz and 1 kHz among the third octaves from 50 Hz. */
const [hz125, hz1000] = [4, 13];

describe('decay of a booth', () => {
  it('comes from modes below the Schroeder frequency and from the field above it, with a range', () => {
    const sound = soundOf(spec());
    expect(at(sound, hz125).method).toBe('modes');
    expect(['statistical', 'dry']).toContain(at(sound, hz1000).method);
    for (const { seconds, lowS, highS } of sound.decay) {
      if (seconds === null) continue;
      expect(lowS).toBeLessThanOrEqual(seconds);
      expect(highS).toBeGreaterThanOrEqual(seconds);
    }
  });

  it('is never longer with a deeper lining, in any band that both know', () => {
    const [thin, deep] = [soundOf(spec({ booths: [lined(0.05)] })), soundOf(spec({ booths: [lined(0.1)] }))];
    for (const band of [hz125, 7, 10, hz1000])
      expect(at(deep, band).seconds as number).toBeLessThanOrEqual((at(thin, band).seconds as number) * 1.02);
  });

  it('is far longer between bare heavy walls than between lined ones', () => {
    const bare = soundOf(spec({ booths: [booth(slab, { linings: [] })] }));
    expect(at(bare, hz1000).seconds).toBeGreaterThan(
      3 * (at(soundOf(spec({ booths: [lined(0.1)] })), hz1000).seconds as number),
    );
    expect(at(bare, hz125).seconds).toBeGreaterThan(
      at(soundOf(spec({ booths: [lined(0.1)] })), hz125).seconds as number,
    );
  });

  it('is not told with an open face', () => {
    const whole = booth();
    expect(
      onlyBooth(spec({ booths: [{ ...whole, faces: { ...whole.faces, roof: undefined } }] })).roomSound,
    ).toBeNull();
  });

  it('flags the modes that lie on a voice', () => {
    const { modes } = soundOf(spec());
    for (const { hz, onVoice } of modes) expect(onVoice.includes('low-voice')).toBe(hz >= 85 && hz <= 180);
  });
});

describe('the place of a mouth that the text does not give', () => {
  // The microphone stands at 0.6, 0.7, 1.5 m with the mouth 0.2 m away; the middle of 1.35 m lies at 0.675 m, before it.
  const default_ = { x: given(0.6), y: given(0.5), z: given(1.5), range: place() };
  const [unstated, stated] = [lined(0.05), { ...lined(0.05), mouth: default_ }].map((one) =>
    assess(spec({ booths: [one] })),
  );

  it('is the one of the reflections, and room sound is that of a mouth stated there', () => {
    const [one, other] = [unstated, stated].map((result) => Object.values(result!.booths)[0]!);
    for (const [axis, value] of [0.6, 0.5, 1.5].entries())
      expect(one!.reflections!.mouthM[axis]).toBeCloseTo(value, 12);
    expect(one!.roomSound!.decay).toEqual(other!.roomSound!.decay);
    const elsewhere = { ...default_, y: given(0.69) };
    expect(soundOf(spec({ booths: [{ ...lined(0.05), mouth: elsewhere }] })).decay).not.toEqual(one!.roomSound!.decay);
  });

  it('is said among the assumptions, once and only where it is one', () => {
    const places = (result: typeof unstated) => result!.defaults.filter(({ name }) => name === 'mouth-place');
    expect(places(unstated).map(({ value }) => value)).toEqual(['0.60 m, 0.50 m, 1.50 m']);
    expect(places(stated)).toEqual([]);
    expect(soundOf(spec()).assumes.filter((text) => text.includes('mouth is not placed'))).toHaveLength(1);
  });
});

describe('the range of a decay by modes', () => {
  /** How far the range reaches beyond the figure, as a ratio. */
  const reach = (one: ReturnType<typeof booth>, people = 1) => {
    const { seconds, highS } = at(soundOf(spec({ booths: [one], session: session({ people: given(people) }) })), hz125);
    return (highS as number) / (seconds as number);
  };
  const ofWool = (tolerance: number) => {
    const uncertain = { ...wool, resistivity: given(12000, tolerance) };
    return booth(slab, { doors: [], linings: [lining(faceNames, 1, sheet(uncertain, 0.1))] });
  };

  it('is at least the model term of a quarter wide, both ways', () => {
    for (const { seconds, lowS, highS, method } of soundOf(spec()).decay) {
      if (method !== 'modes') continue;
      expect((highS as number) / (seconds as number)).toBeGreaterThanOrEqual(1.25);
      expect((seconds as number) / (lowS as number)).toBeGreaterThanOrEqual(1.25);
    }
  });

  it('follows the stated tolerance of the flow resistivity', () => {
    expect(reach(ofWool(9000))).toBeGreaterThan(1.1 * reach(ofWool(600)));
  });
});

describe('require decay-ratio', () => {
  const ratio = (limit: number, hz = 125) =>
    requirement({ kind: 'decay-ratio', text: 'require decay-ratio', limit: given(limit), atHz: given(hz) });

  it('is the decay of the band over that of the middle bands', () => {
    const text = spec({ booths: [lined(0.05)], requirements: [ratio(1)] });
    const sound = soundOf(text);
    const verdict = onlyVerdict(text);
    expect(verdict.value?.value).toBeCloseTo((at(sound, hz125).seconds as number) / sound.mid!.seconds, 12);
    expect(verdict.verdict).toBe(verdict.value!.value <= 1 ? 'met' : 'missed');
    expect(onlyVerdict(spec({ booths: [lined(0.05)], requirements: [ratio(100)] })).verdict).toBe('met');
  });

  it('is not assessed where no mode lies near, and with an open face', () => {
    expect(onlyVerdict(spec({ requirements: [ratio(2, 50)] })).verdict).toBe('not-assessed');
    const open = { ...booth(shell), faces: { ...booth(shell).faces, roof: undefined } };
    expect(onlyVerdict(spec({ booths: [open], requirements: [ratio(2)] })).verdict).toBe('not-assessed');
  });
});
