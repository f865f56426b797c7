import { describe, expect, it } from 'vitest';
import { findingsById, onlyBooth } from '../fixtures/assessed.js';
import { bigBox } from '../fixtures/booth-text.js';
import { booth, lining, sheet, slab, spec, wool } from '../fixtures/spec-builder.js';

const id = 'boxy-decay';
const walls = ['left', 'right', 'front', 'back', 'roof'] as const;
const lined = (depth: number, changes = {}) =>
  spec({ booths: [booth(slab, { doors: [], linings: [lining(walls, 1, sheet(wool, depth))], ...changes })] });

describe(id, () => {
  const text = lined(0.05);
  const [found] = findingsById(text, id);
  const sound = onlyBooth(text).roomSound!;

  it('tells of thin fibre in a heavy box, with the ratio of the decays and its limit', () => {
    const at125 = sound.decay.find(({ hz }) => hz === 125)!;
    expect(found?.figures.ratio125).toBeCloseTo((at125.seconds as number) / sound.mid!.seconds, 12);
    expect(found?.figures.ratio125).toBeGreaterThan(2);
    expect(found?.figures.ratio125Low).toBeCloseTo((at125.lowS as number) / sound.mid!.highS, 12);
    expect(found?.severity).toBe((found?.figures.ratio125Low as number) > 2 ? 'warning' : 'information');
    expect(found?.message).toMatch(/125 Hz/);
  });

  it('says which one change helps most, and building it brings what is said', () => {
    expect(found?.fix).toMatch(/100 mm instead of 50 mm of fibre (on the (left|right|front|back) wall|under the roof)/);
    const face = ['left', 'right', 'front', 'back', 'roof'].find((name) =>
      found!.fix.includes(name === 'roof' ? 'under the roof' : `the ${name} wall`),
    );
    const others = walls.filter((name) => name !== face);
    const built = lined(0.05, {
      linings: [lining(others, 1, sheet(wool, 0.05)), lining([face as 'left'], 1, sheet(wool, 0.1))],
    });
    const worst = (found!.figures.ratio125 ?? 0) / 2 > (found!.figures.ratio250 ?? 0) / 1.3 ? 125 : 250;
    const then = onlyBooth(built).roomSound!.decay.find(({ hz }) => hz === worst)!.seconds;
    expect(found?.figures.afterS).toBeCloseTo(then as number, 9);
    expect(found?.figures.afterS).toBeLessThan(0.9 * (found?.figures[`decay${worst}S`] as number));
  });

  it('is silent about the near miss: deeper fibre, whose lows ring a little longer than the middle', () => {
    const text = lined(0.16, { linings: [lining([...walls, 'floor'], 1, sheet(wool, 0.16))] });
    const { ratio125, decay, mid } = onlyBooth(text).roomSound!;
    expect(ratio125).toBeGreaterThan(1);
    expect(ratio125).toBeLessThan(2);
    // At 250 Hz the range leaves it open whether it rings longer at all.
    expect(decay.find(({ hz }) => hz === 250)!.lowS).toBeLessThan(mid!.highS);
    expect(findingsById(text, id)).toEqual([]);
  });

  it('is silent without a decay, where a face is open', () => {
    const whole = booth(slab);
    const open = { ...whole, faces: { ...whole.faces, roof: undefined } };
    expect(findingsById(spec({ booths: [open] }), id)).toEqual([]);
  });

  it('fires in an unrelated box with thin fibre, and does not call walls thinly lined that are bare', () => {
    const thin = bigBox({ booth: 'lining on left, right, front, back, roof { mineral-wool-60 25 mm }' });
    expect(findingsById(thin, id)).toHaveLength(1);
    for (const one of findingsById(lined(0.05, { linings: [] }), id))
      expect(one.explanation).not.toContain('fibre takes');
  });
});
