import { readFileSync } from 'node:fs';
import type { Booth } from '@boothwright/language';
import { describe, expect, it } from 'vitest';
import { buildResult } from '../../src/build/build-result.js';
import { createMemo } from '../../src/memo/memo.js';
import { specOf } from '../fixtures/from-text.js';
import { assembly, booth, door, given, gypsum, place, plywood, sheet } from '../fixtures/spec-builder.js';

const example = (name: string) =>
  specOf(readFileSync(new URL(`../../../../shared/examples/${name}/${name}.booth`, import.meta.url), 'utf8'));
const panels = (width: number, split?: number): Booth['panels'] => ({
  range: place(),
  width: given(width),
  split: split === undefined ? undefined : given(split),
  fastened: undefined,
  roof: undefined,
});
const cuts = [
  ['tram-alcove', panels(0.6)],
  ['tram-alcove', panels(0.9, 1.2)],
  ['under-the-nursery', panels(0.65)],
  ['under-the-nursery', panels(0.605, 1.2)],
] as const;

describe.each(cuts)('parts of %s', (name, cut) => {
  const { site, session, budget, booths } = example(name);
  const built = { ...(booths[0] as Booth), panels: cut };
  const build = buildResult(built, site, session, budget, createMemo());

  it('lays every board and stick out exactly as often as the cut list has it', () => {
    for (const layout of build.sheetLayouts) {
      const laid = layout.sheets.flatMap((one) => one.parts.map(({ mark }) => mark));
      const listed = build.parts
        .filter((part) => part.stock === layout.stock)
        .flatMap((part) => Array.from({ length: part.count }, () => part.mark));
      expect([...laid, ...layout.tooBig.map(({ mark }) => mark)].sort()).toEqual(listed.sort());
    }
    for (const layout of build.lengthLayouts) {
      const cut_ = layout.patterns.reduce((sum, pattern) => sum + pattern.count * pattern.cutsM.length, 0);
      const listed = build.parts
        .filter((part) => part.stock === layout.stock)
        .reduce((sum, part) => sum + part.count, 0);
      expect(cut_ + layout.tooLong.length).toBe(listed);
    }
  });

  it('overlaps no two boards on a sheet', () => {
    for (const { sheets, kerfM } of build.sheetLayouts) {
      for (const { parts } of sheets) {
        parts.forEach((a, index) => {
          for (const b of parts.slice(index + 1)) {
            const apart = Math.max(
              b.xM - a.xM - a.widthM,
              a.xM - b.xM - b.widthM,
              b.yM - a.yM - a.heightM,
              a.yM - b.yM - b.heightM,
            );
            expect(apart).toBeGreaterThanOrEqual(kerfM - 1e-9);
          }
        });
      }
    }
  });

  it('weighs a panel as its rows of the cut list weigh together', () => {
    for (const { number, massKg } of build.panels) {
      const rows = build.parts.filter(({ panel }) => panel === number);
      expect(rows.reduce((sum, row) => sum + (row.massKg ?? 0) * row.count, 0)).toBeCloseTo(massKg, 6);
    }
    const parts = build.parts.reduce((sum, part) => sum + (part.massKg ?? 0) * part.count, 0);
    const linings = build.massByPart.find(({ part }) => part === 'linings')?.kg ?? 0;
    const ducts = build.massByPart.find(({ part }) => part === 'air paths')?.kg ?? 0;
    expect(parts + linings + ducts).toBeCloseTo(build.massKg, 6);
  });

  it('makes no panel wider than asked, but for a door', () => {
    const tooWide = build.panels.filter(({ widthM }) => widthM > (cut?.width.value ?? 0) + 1e-9);
    for (const panel of tooWide) expect(panel.openings.map(({ kind }) => kind)).toContain('door');
  });

  it('stays the same when worked out again', () => {
    expect(buildResult(built, site, session, budget, createMemo())).toEqual(build);
  });
});

describe('mass with and without panels', () => {
  it('agrees where there is no frame: the same boards, cut or not', () => {
    const boards = assembly('boards', sheet(plywood, 0.018), sheet(gypsum, 0.0125));
    const uncut = booth(boards, { doors: [door(boards)] });
    const whole = buildResult(uncut, undefined, undefined, undefined, createMemo());
    const cut = buildResult({ ...uncut, panels: panels(0.6) }, undefined, undefined, undefined, createMemo());
    expect(Math.abs(cut.massKg / whole.massKg - 1)).toBeLessThan(0.02);
    expect(Math.abs(cut.floorLoadPa / whole.floorLoadPa - 1)).toBeLessThan(0.02);
  });
});
