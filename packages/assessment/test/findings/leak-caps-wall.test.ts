import { describe, expect, it } from 'vitest';
import { findingsById } from '../fixtures/assessed.js';
import {
  airGap,
  assembly,
  booth,
  door,
  given,
  gypsum,
  noise,
  place,
  sheet,
  shell,
  site,
  slab,
  spec,
  vent,
  wool,
} from '../fixtures/spec-builder.js';

const id = 'leak-caps-wall';
const named = { nameRange: place(), range: place(), face: 'back' as const, faceRange: place() };
const heavy = assembly('heavy', sheet(gypsum, 0.025), sheet(wool, 0.1), airGap(0.05), sheet(gypsum, 0.025));
/** Voices next door: a source of the bands in which a leak counts. */
const voices = site({ sources: [noise('voices', [30, 40, 55, 60, 58, 52, 45])] });

function leaky(threshold: number, walls = heavy) {
  const plain = booth(walls);
  const faces = { ...plain.faces, floor: { assembly: walls, range: place() } };
  return { ...plain, faces, doors: [door(walls, { thresholdGap: given(threshold), perimeterGap: given(0) })] };
}

describe(id, () => {
  it('fires on an open threshold under heavy walls, with the ceiling in dB and the open area', () => {
    const [finding] = findingsById(spec({ walls: [heavy], booths: [leaky(5e-3)], site: voices }), id);
    expect(finding?.figures.openAreaCm2).toBeCloseTo(0.66 * 5e-3 * 1e4, 6);
    expect(finding?.figures.ceilingDb).toBeLessThan((finding?.figures.withoutLeaksDb as number) - 5);
    expect(finding?.message).toContain('33.0 cm2');
    expect(finding?.severity).toBe('warning');
    expect(finding?.fix).toContain('threshold');
  });

  it('computes what closing the leak gives', () => {
    const [finding] = findingsById(spec({ walls: [heavy], booths: [leaky(5e-3)], site: voices }), id);
    const { insideDbA, insideDbAWithoutWorstLeak, stc, stcWithoutWorstLeak } = finding?.figures ?? {};
    expect(insideDbAWithoutWorstLeak).toBeLessThan((insideDbA as number) - 1);
    expect(stcWithoutWorstLeak).toBeGreaterThan(stc as number);
  });

  it('is silent for the same walls with the gap closed', () => {
    expect(findingsById(spec({ walls: [heavy], booths: [leaky(0)], site: voices }), id)).toEqual([]);
  });

  it('is silent for the same gap in walls that are no better than it', () => {
    const poor = assembly('poor', sheet(gypsum, 0.006));
    expect(findingsById(spec({ walls: [poor], booths: [leaky(0.3e-3, poor)], site: voices }), id)).toEqual([]);
  });

  it('fires on a hole in an unrelated booth of one heavy leaf', () => {
    const other = {
      ...booth(slab, { doors: [], holes: [{ ...named, name: 'cable', diameter: given(0.08), depth: given(0.05) }] }),
      name: 'cellar',
    };
    const faces = { ...other.faces, floor: { assembly: slab, range: place() } };
    const [finding] = findingsById(spec({ walls: [slab], booths: [{ ...other, faces }], site: voices }), id);
    expect(finding?.message).toContain('cellar');
    expect(finding?.fix).toContain('hole cable');
  });

  it('says that closing makes no difference instead of the same figure twice', () => {
    const rumble = site({ sources: [noise('rumble', [100, 40, 0, 0, 0, 0, 0])] });
    const [finding] = findingsById(spec({ walls: [heavy], booths: [leaky(5e-3)], site: rumble }), id);
    expect(finding?.explanation).toContain('makes no difference to the noise inside');
    expect(finding?.explanation).not.toMatch(/from ([\d.]+) to \1 dBA/);
  });

  it('is only information when other bands set the level inside', () => {
    const rumble = site({ sources: [noise('rumble', [90, 80, 20, 0, 0, 0, 0])] });
    const vents = [vent('intake', { run: given(0.3), bends: given(0), lining: undefined })];
    const [finding] = findingsById(spec({ walls: [heavy], booths: [{ ...leaky(5e-3), vents }], site: rumble }), id);
    expect(finding?.severity).toBe('information');
    expect(finding?.explanation).toContain('not the first thing to spend money on');
    expect(findingsById(spec({ walls: [shell], site: voices }), id)).toEqual([]);
  });
});
