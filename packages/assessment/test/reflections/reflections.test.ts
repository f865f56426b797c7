import { describe, expect, it } from 'vitest';
import { onlyBooth } from '../fixtures/assessed.js';
import { specOf } from '../fixtures/from-text.js';

/** A wide box of one heavy leaf, so that no wall is near; its floor is the hard floor of the building. Invented. */
const hall = (lines: string) =>
  specOf(`use catalog
assembly slab { gypsum-board 50 mm }
site "hall" { room 9 m x 9 m x 4 m; temperature 20 degC }
booth hall {
  inside 4 m x 4 m x 2.6 m
  walls slab; roof slab
  ${lines}
}
session { people 1; length 30 min }
`);
const found = (lines: string) => onlyBooth(hall(lines)).reflections!;
const named = (lines: string, name: string) => found(lines).early.filter((each) => each.name === name);
/** m over or beside a mirror, so that the reflection travels 0.55 m where the voice travels 0.20 m. */
const aside = Math.sqrt(0.55 ** 2 - 0.2 ** 2) / 2;
const m = (value: number) => `${value.toFixed(6)} m`;
/** Mouth and microphone side by side at one height, 0.20 m apart. */
const pair = (height: number, more = '') =>
  `mouth at 2 m, 2.1 m, ${m(height)}; mic at 2 m, 1.9 m, ${m(height)} { distance 200 mm${more} }`;

describe('20 cm direct, 55 cm by a mirror', () => {
  // Worked by hand: 0.35 m at 343 m/s, first null 343 / 0.7 = 490 Hz; g = 20/55, ripple 20 lg(1 + g) = +2.7 dB and
  // 20 lg(1 - g) = -3.9 dB; with 80 % absorbed g = 20/55 sqrt(0.2): +1.3 and -1.5 dB.
  const off = (value: number | null | undefined, expected: number) => Math.abs((value as number) - expected);

  it('makes its first null at 490 Hz and ripples by +2.7 and -3.9 dB over a hard floor', () => {
    const [floor] = named(pair(aside), 'floor');
    expect(off(floor?.pathDifferenceM, 0.35)).toBeLessThan(1e-5);
    expect(off(floor?.firstNullHz, 490)).toBeLessThan(2);
    expect(off(floor?.peakDb, 2.7)).toBeLessThan(0.05);
    expect(off(floor?.dipDb, -3.9)).toBeLessThan(0.05);
    expect(floor?.strong).toBe(true);
  });

  const stand = (absorbs: number) =>
    `${pair(1.2)}; equipment copy "copy stand" at 2 m, 2 m, ${m(1.2 - aside - 0.005)} { kind copy-stand; size 3.8 m x 3.8 m x 10 mm; absorbs ${absorbs} % }`;

  it('does the same over a wide hard stand, less with an absorbing top', () => {
    for (const [absorbs, peak, dip] of [
      [0, 2.7, -3.9],
      [80, 1.3, -1.5],
    ] as const) {
      const [top] = named(stand(absorbs), 'copy stand');
      expect(off(top?.firstNullHz, 490)).toBeLessThan(2);
      // The edges, 1.9 m away, bring some tenths of a decibel.
      expect(off(top?.peakDb, peak)).toBeLessThan(0.15);
      expect(off(top?.dipDb, dip)).toBeLessThan(0.2);
    }
  });

  it('says before what the cover does that it then does', () => {
    const [hard] = named(stand(0), 'copy stand');
    const [soft] = named(stand(80), 'copy stand');
    expect(hard?.covered?.levelDb).toBeCloseTo(soft?.levelDb as number, 9);
    expect(hard?.covered?.dipDb).toBeCloseTo(soft?.dipDb as number, 9);
    expect(soft?.covered).toBeNull();
  });

  it('is less by a cardioid that looks at the mouth: 3.3 dB for a reflection from 69 degrees', () => {
    // cos = 0.1 / 0.275; 20 lg(0.5 + 0.5 cos).
    const loss = -20 * Math.log10(0.5 + (0.5 * 0.1) / 0.275);
    const [omni, cardioid] = [pair(aside), pair(aside, '; pattern cardioid')].map((lines) => named(lines, 'floor')[0]);
    expect((omni?.levelDb as number) - (cardioid?.levelDb as number)).toBeCloseTo(loss, 4);
    expect(loss).toBeCloseTo(3.33, 2);
  });

  it('is not taken in at all by a figure of eight from its side, nor by a cardioid from behind', () => {
    const behind = (pattern: string) =>
      `mouth at 2 m, 2.1 m, 1.5 m; mic at 2 m, 1.9 m, 1.5 m { distance 200 mm; pattern ${pattern} }; equipment screen at 2 m, 1.6 m, 1.5 m { kind screen; size 2 m x 10 mm x 2 m }`;
    expect(named(behind('omni'), 'screen')[0]?.levelDb).toBeGreaterThan(-15);
    expect(named(behind('cardioid'), 'screen')).toEqual([]);
    expect(named(behind('figure-eight'), 'screen')[0]?.levelDb).toBeCloseTo(
      named(behind('omni'), 'screen')[0]?.levelDb as number,
      9,
    );
  });
});

describe('what stands in the booth', () => {
  it('is a window where the mirror point lies in it, and the wall beside it elsewhere', () => {
    const by = (height: string) =>
      `window view on left { size 1 m x 1 m; pane slab }; mouth at 0.5 m, 2.1 m, ${height}; mic at 0.5 m, 1.9 m, ${height} { distance 200 mm }`;
    const onLeft = (height: string) => found(by(height)).early.find(({ atM }) => atM[0] === 0);
    expect(onLeft('1.5 m')).toMatchObject({ name: 'window view', kind: 'window' });
    expect(onLeft('0.7 m')).toMatchObject({ name: 'left wall', kind: 'face' });
  });

  it('is a desk under the voice, weaker the smaller it is', () => {
    const desk = (size: string) =>
      named(`${pair(1.2)}; equipment desk at 2 m, 2 m, 0.75 m { kind desk; size ${size} }`, 'desk')[0]
        ?.levelDb as number;
    expect(desk('1.4 m x 0.7 m x 30 mm')).toBeGreaterThan(desk('0.3 m x 0.2 m x 30 mm'));
  });

  it('sends nothing back once it leans away, as its advice says', () => {
    const holder = (tilt: number) =>
      named(
        `mouth at 2 m, 2.1 m, 1.5 m; mic at 2 m, 1.9 m, 1.5 m { distance 200 mm }; equipment copy at 2 m, 1.65 m, 1.5 m { kind copy-stand; size 0.35 m x 10 mm x 0.28 m; tilt ${tilt} deg }`,
        'copy',
      );
    const upright = holder(0)[0]!;
    expect(upright.strong).toBe(true);
    const [, step, way] = /lean its top (\d+) deg further (back|forward)/.exec(upright.todo) ?? [];
    const levels = holder((way === 'back' ? 1 : -1) * Number(step)).map(({ levelDb }) => levelDb);
    expect(levels.every((level) => level <= -15)).toBe(true);
  });
});

describe('properties', () => {
  it('hold a farther mirror to be weaker and later', () => {
    const floors = [0.3, 0.5, 0.8, 1.2].map((height) => named(pair(height), 'floor')[0]!);
    for (const [index, farther] of floors.slice(1).entries()) {
      expect(farther.levelDb).toBeLessThan(floors[index]!.levelDb);
      expect(farther.delayMs).toBeGreaterThan(floors[index]!.delayMs);
      expect(farther.firstNullHz).toBeLessThan(floors[index]!.firstNullHz);
    }
  });

  it('never let more absorption raise a level or a ripple', () => {
    const levels = [0, 20, 50, 80, 95].map((absorbs) => {
      const lines = `${pair(1.2)}; equipment desk at 2 m, 2 m, 0.75 m { kind desk; size 1.4 m x 0.7 m x 30 mm; absorbs ${absorbs} % }`;
      return named(lines, 'desk')[0]!;
    });
    for (const [index, more] of levels.slice(1).entries()) {
      expect(more.levelDb).toBeLessThan(levels[index]!.levelDb);
      expect(more.peakDb).toBeLessThan(levels[index]!.peakDb);
      expect(more.dipDb).toBeGreaterThan(levels[index]!.dipDb as number);
    }
  });

  it('keep the strongest first and every one within 10 ms', () => {
    const { early } = found('mouth at 0.5 m, 0.7 m, 1.2 m; mic at 0.5 m, 0.5 m, 1.2 m { distance 200 mm }');
    expect(early.length).toBeGreaterThan(2);
    for (const [index, next] of early.slice(1).entries())
      expect(next.levelDb).toBeLessThanOrEqual(early[index]!.levelDb);
    for (const { delayMs, levelDb } of early) {
      expect(delayMs).toBeLessThanOrEqual(10);
      expect(levelDb).toBeGreaterThanOrEqual(-40);
    }
  });
});
