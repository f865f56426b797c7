import { describe, expect, it } from 'vitest';
import { findingsById, onlyBooth } from '../fixtures/assessed.js';
import { bigBox } from '../fixtures/booth-text.js';
import { booth, given, lining, sheet, slab, spec, wool } from '../fixtures/spec-builder.js';

const id = 'modes-on-the-voice';
const walls = ['left', 'right', 'front', 'back', 'roof'] as const;
const lined = (faces: readonly (typeof walls)[number][], depth: number, changes = {}) =>
  spec({ booths: [booth(slab, { doors: [], linings: [lining(faces, 1, sheet(wool, depth))], ...changes })] });

describe(id, () => {
  it('names the modes of thin fibre with their faces, slowest first, as the list of modes has them', () => {
    const text = lined(walls, 0.05);
    const [found] = findingsById(text, id);
    const { modes } = onlyBooth(text).roomSound!;
    const slowest = modes
      .filter(({ hz }) => hz > 90)
      .reduce((most, each) => (each.decayS! > most.decayS! ? each : most));
    expect(found?.figures.slowestHz).toBe(slowest.hz);
    expect(found?.figures.slowestS).toBe(slowest.decayS);
    expect(found?.message).toMatch(/between (left and right|front and back|floor and roof)/);
    expect(found?.figures.afterS).toBeLessThan(slowest.decayS as number);
  });

  it('is silent in the near miss: fibre a little short of a quarter wave on every face', () => {
    const deep = { linings: [lining([...walls, 'floor'], 1, sheet(wool, 0.2))] };
    expect(findingsById(lined(walls, 0.2, deep), id)).toEqual([]);
  });

  it('is silent where a mode rings as long but above every pitch', () => {
    // 0.5 m x 0.5 m x 0.55 m: the first mode lies above 300 Hz.
    const tiny = {
      inside: { width: given(0.5), depth: given(0.5), height: given(0.55) },
      linings: [],
      microphone: undefined,
    };
    expect(findingsById(lined([], 0.05, tiny), id)).toEqual([]);
  });

  it('sets coinciding modes apart by a side', () => {
    const square = { inside: { width: given(1.35), depth: given(1.35), height: given(2.0) } };
    const [found] = findingsById(lined(walls, 0.05, square), id);
    expect(found?.fix).toMatch(/lie within 5 % and act as one: \d+ mm (more|less) (wide|deep|high)/);
  });

  it('fires in an unrelated box with fibre on one wall only', () => {
    const text = bigBox({ booth: 'lining on left, right, front, back, roof { mineral-wool-60 25 mm }' });
    const found = findingsById(text, id);
    const { modes, mid } = onlyBooth(text).roomSound!;
    const slow = modes.filter(({ hz, decayS }) => hz > 85 && hz < 177 && decayS! > 2 * Math.max(mid!.seconds, 0.06));
    expect(slow.length).toBeGreaterThan(0);
    expect(found).toHaveLength(1);
  });
});
