import {
  airProperties,
  bendFlowNoise,
  endReflectionLoss,
  levelInRoom,
  levelOf,
  straightDuctFlowNoise,
} from '@boothwright/acoustics';
import type { Equipment, Microphone, Vent } from '@boothwright/language';
import { describe, expect, it } from 'vitest';
import { perBand } from '../../src/bands/grid.js';
import { bandModelsOf } from '../../src/booth/band-models.js';
import { createMemo } from '../../src/memo/memo.js';
import { airAtOpenings } from '../../src/noise/air-at-openings.js';
import { airInDucts } from '../../src/noise/air-in-ducts.js';
import { equipmentNoise } from '../../src/noise/equipment.js';
import { ownSounds } from '../../src/noise/own-sounds.js';
import { onlyBooth, onlyVerdict } from '../fixtures/assessed.js';
import {
  booth,
  given,
  octaves,
  place,
  quietFan,
  roomTone,
  session,
  shell,
  site,
  spec,
  unknownFan,
  vent,
} from '../fixtures/spec-builder.js';

const air = airProperties({ temperature: 20, relativeHumidity: 0.5 });
const models = bandModelsOf(60, 86, 300);
const area = {
  surfaces: perBand(() => 6),
  total: perBand(() => 6),
  mean: perBand(() => 0.4),
  airAttenuation: perBand(() => 0),
};
const computer = (changes: Partial<Equipment> = {}): Equipment => ({
  name: 'computer',
  nameRange: place(),
  range: place(),
  kind: given('computer' as const),
  position: { range: place(), x: given(0.6), y: given(0.7), z: given(0.5) },
  size: undefined,
  tilt: given(0),
  mount: undefined,
  mass: undefined,
  heat: undefined,
  soundPower: octaves([20, 22, 24, 26, 26, 24, 20]),
  absorption: given(0.05),
  ...changes,
});

describe('equipmentNoise(booth, ...)', () => {
  const heard = (microphone: Microphone | undefined) =>
    equipmentNoise(booth(shell, { equipment: [computer()], microphone }), area, models, air)[0];

  it('is direct and reverberant sound at the place of the microphone', () => {
    // The microphone of the fixture stands 1 m above it; R = A/(1 - 0.4).
    const found = heard(booth().microphone);
    expect(found?.distanceM).toBeCloseTo(1, 12);
    const power = 26 - 10 * Math.log10(3);
    expect(found?.atMicrophone.byBand[13]).toBeCloseTo(levelInRoom(power, 1, 1, 10, air), 9);
  });

  it('is the reverberant sound alone without a microphone', () => {
    const power = 26 - 10 * Math.log10(3);
    const expected = power + 10 * Math.log10(4 / 10) + 10 * Math.log10(air.impedance / 400);
    expect(heard(undefined)?.atMicrophone.byBand[13]).toBeCloseTo(expected, 6);
  });
});

it('a computer adds to the noise inside, and without a sound power leaves a met verdict open', () => {
  const noisy = booth(shell, { equipment: [computer({ soundPower: octaves([60, 60, 60, 60, 60, 60, 60]) })] });
  const loud = onlyBooth(spec({ booths: [noisy] })).noise;
  const plain = onlyBooth(spec()).noise;
  expect((loud.total.dBA?.value as number) - (plain.total.dBA?.value as number)).toBeGreaterThan(20);
  expect(onlyVerdict(spec({ booths: [noisy], requirements: [roomTone(20, 'A')] })).limitedBy).toBe(
    'equipment:computer',
  );
  const unknown = booth(shell, { equipment: [computer({ soundPower: undefined })] });
  const open = onlyVerdict(spec({ booths: [unknown], requirements: [roomTone(60, 'A')] }));
  expect(open.verdict).toBe('not-assessed');
  expect(open.explanation).toContain('computer has no sound power');
  expect(onlyBooth(spec({ booths: [unknown] })).noise.notPredicted.map(({ kind }) => kind)).toContain('unknown-power');
});

describe('airInDucts(booth, setting, ...)', () => {
  const bare = (changes: Partial<Vent> = {}) => vent('in', { bends: given(1), ...changes });
  const both = booth(shell, { vents: [bare({ fan: quietFan }), bare({ bends: given(0) })] });

  it('adds run and bends of both ducts, less the reflection at the end', () => {
    const found = airInDucts(both, 'high', area.total, models, air, createMemo())?.byBand[13] as number;
    const duct = (Math.PI / 4) * 0.125 ** 2;
    const speed = 0.01 / duct;
    const end = endReflectionLoss({ area: duct, termination: 'flush' }, air).loss[13] as number;
    const run = straightDuctFlowNoise(1000, speed, duct);
    const bend = bendFlowNoise(1000, { speed, area: duct, height: 0.125, density: air.density });
    const sum = 10 * Math.log10(2 * 10 ** (run / 10) + 10 ** (bend / 10));
    expect(found).toBeCloseTo(sum - 10 * Math.log10(3) - end + 10 * Math.log10(4 / 6), 2);
  });

  it('falls with the speed and is gone when nothing moves the air', () => {
    const at = (setting: 'off' | 'low' | 'high') =>
      airInDucts(both, setting, area.total, models, air, createMemo())?.byBand[7];
    expect(at('low')).toBeLessThan((at('high') as number) - 10);
    expect(at('off')).toBeUndefined();
  });
});

describe('settings of the fan', () => {
  const vents = [vent('in', { fan: quietFan }), vent('out')];
  const withFan = booth(shell, { vents });
  const at = (speed: 'off' | 'low' | 'high') =>
    onlyBooth(spec({ booths: [withFan], session: session({ fanSpeed: given(speed) }) })).noise;

  it('are told side by side, and the session picks one for the verdicts', () => {
    const { bySetting, total } = at('low');
    expect(bySetting.map(({ setting }) => setting)).toEqual(['off', 'low', 'high']);
    expect(bySetting.find(({ session: own }) => own)?.setting).toBe('low');
    expect(total.dBA?.value).toBe(bySetting[1]?.total.dBA?.value);
    const levels = bySetting.map((each) => each.total.dBA?.value as number);
    expect(levels[0]).toBeLessThan(levels[1] as number);
    expect(levels[1]).toBeLessThan(levels[2] as number);
    expect(at('high').total.dBA?.value).toBe(levels[2]);
    expect(at('off').fan).toBeNull();
  });

  it('leave a verdict alone when a fan of unknown power stands still', () => {
    const silent = booth(shell, { vents: [vent('in', { fan: unknownFan }), vent('out')] });
    const verdict = (speed: 'off' | 'high') =>
      onlyVerdict(
        spec({ booths: [silent], session: session({ fanSpeed: given(speed) }), requirements: [roomTone(60, 'A')] }),
      ).verdict;
    expect(verdict('off')).toBe('met');
    expect(verdict('high')).toBe('not-assessed');
  });

  it('name a fan in the wall by its vibration', () => {
    const noisy = booth(shell, {
      vents: [vent('in', { fan: { ...quietFan, place: given('in-wall' as const) } }), vent('out')],
    });
    const missing = onlyBooth(spec({ booths: [noisy], site: site() })).noise.notPredicted;
    expect(missing.map(({ kind }) => kind)).toEqual(['vibration']);
  });

  it('tell the hiss of a small grille among the sounds, and whose it is', () => {
    const fast = { ...quietFan, flow: given(0.03) };
    const noisy = booth(shell, { vents: [vent('in', { fan: fast, grille: grille(0.1, 0.3) }), vent('out')] });
    const heard = (fanSpeed: 'off' | 'low' | 'high') =>
      onlyBooth(spec({ booths: [noisy], site: site(), session: session({ fanSpeed: given(fanSpeed) }) })).noise;
    const { airAtOpenings, airParts, bySetting, total } = heard('high');
    const bySpeed = bySetting.map((each) => each.airAtOpenings?.dBA?.value ?? null);
    expect(bySpeed[0]).toBeNull();
    // 60 lg of the speed, and the peak moves up as well.
    expect((bySpeed[2] as number) - (bySpeed[1] as number)).toBeGreaterThan(60 * Math.log10(1 / 0.6));
    expect(airAtOpenings?.dBA?.value).toBe(bySpeed[2]);
    expect(total.dBA?.value).toBeGreaterThan(airAtOpenings?.dBA?.value as number);
    expect(airParts.map(({ vent: name, way }) => `${name} ${way}`)).toEqual([
      'in duct',
      'out duct',
      'in grille',
      'out duct-end',
    ]);
    expect(ownSounds(heard('high')).find(({ id }) => id === 'air-at-openings')?.phrase).toBe(
      'the hiss of the air at the grille of in',
    );
    expect(heard('off').airAtOpenings).toBeNull();
  });
});

describe('airAtOpenings(booth, setting, ...)', () => {
  const fast = { ...quietFan, flow: given(0.03) };
  const at = (changes: Partial<Vent>, setting: 'off' | 'low' | 'high' = 'high') => {
    const one = booth(shell, { vents: [vent('in', { fan: fast, ...changes }), vent('out')] });
    return airAtOpenings(one, setting, area.total, models, air, createMemo());
  };
  const duct = (Math.PI / 4) * 0.125 ** 2;
  const dynamic = (flow: number, face: number) => (air.density / 2) * (flow / face) ** 2;

  it('takes a vent without a grille as a plain end that loses the speed of its air', () => {
    // 30 L/s in 125 mm: 2.44 m/s, 3.6 Pa, peak at 391 Hz; 1 kHz lies 1.35 octaves above it.
    const speed = 0.03 / duct;
    const power =
      10 + 10 * Math.log10(duct) + 30 * Math.log10(dynamic(0.03, duct)) - 5 * Math.log2(1000 / (160 * speed));
    const found = at({})?.parts.find(({ vent: name }) => name === 'in');
    const octave = [12, 13, 14].map((band) => 10 ** (((found?.byBand[band] as number) - levelOf(4 / 6)) / 10));
    expect(10 * Math.log10(octave.reduce((sum, energy) => sum + energy, 0))).toBeCloseTo(power, 1);
  });

  it('takes a grille with its bars, the widening before it and the air that leaves it', () => {
    const face = 0.04;
    const speed = 0.03 / duct;
    // Borda and Carnot: (1 - S_1/S_2)^2 of the speed in the duct; Idelchik's thin grid at 0.5: 4; the outlet 1.
    const loss = (1 - duct / face) ** 2 * dynamic(0.03, duct) + (4 + 1) * dynamic(0.03, face);
    const power = 10 + 10 * Math.log10(face) + 30 * Math.log10(loss) - 5 * Math.log2(1000 / (160 * speed));
    const found = at({ grille: grille(0.2, 0.5) })?.parts.find(({ way }) => way === 'grille');
    const octave = [12, 13, 14].map((band) => 10 ** (((found?.byBand[band] as number) - levelOf(4 / 6)) / 10));
    expect(10 * Math.log10(octave.reduce((sum, energy) => sum + energy, 0))).toBeCloseTo(power, 1);
  });

  it('is louder the smaller and the more closed the face, and nothing where no air moves', () => {
    const middle = (changes: Partial<Vent>) => at(changes)?.byBand[13] as number;
    expect(middle({ grille: grille(0.1, 0.5) })).toBeGreaterThan(middle({ grille: grille(0.2, 0.5) }) + 10);
    expect(middle({ grille: grille(0.1, 0.3) })).toBeGreaterThan(middle({ grille: grille(0.1, 0.5) }) + 10);
    expect(at({}, 'off')).toBeUndefined();
    const closed = booth(shell, { vents: [vent('in', { fan: fast })] });
    expect(airAtOpenings(closed, 'high', area.total, models, air, createMemo())).toBeUndefined();
  });
});

/** A square grille of a side, m, and a free share. */
function grille(side: number, free: number): NonNullable<Vent['grille']> {
  return { range: place(), size: { width: given(side), height: given(side) }, free: given(free) };
}
