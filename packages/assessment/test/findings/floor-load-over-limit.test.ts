import { describe, expect, it } from 'vitest';
import { assess, findingsById } from '../fixtures/assessed.js';
import { booth, given, requirement, slab, spec } from '../fixtures/spec-builder.js';

const id = 'floor-load-over-limit';
const load = (pascal: number) =>
  requirement({ kind: 'floor-load', text: `require floor-load <= ${pascal} Pa`, limit: given(pascal) });

describe(id, () => {
  const { floorLoadPa, loadedMassKg, footprintM2 } = assess(spec()).booths.alcove?.build ?? {
    floorLoadPa: 0,
    loadedMassKg: 0,
    footprintM2: 0,
  };

  it('says what must go and what footprint would carry it', () => {
    const [finding] = findingsById(spec({ requirements: [load(floorLoadPa * 0.8)] }), id);
    expect(finding?.figures.excessKg).toBeCloseTo(0.2 * loadedMassKg, 6);
    expect(finding?.figures.neededFootprintM2).toBeCloseTo(footprintM2 / 0.8, 9);
    expect(finding?.fix).toContain('structural engineer');
  });

  it('is silent at just below the limit, and without a requirement', () => {
    expect(findingsById(spec({ requirements: [load(floorLoadPa * 1.001)] }), id)).toEqual([]);
    expect(findingsById(spec(), id)).toEqual([]);
  });

  it('fires in an unrelated booth', () => {
    const cellar = { ...booth(slab), name: 'cellar' };
    expect(findingsById(spec({ booths: [cellar], requirements: [load(800)] }), id)[0]?.message).toContain('cellar');
  });
});
