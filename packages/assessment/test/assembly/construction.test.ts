import { describe, expect, it } from 'vitest';
import { constructionOf } from '../../src/assembly/construction.js';
import { airGap, byMass, carpet, frame, gypsum, plywood, sheet, vinyl, wool } from '../fixtures/spec-builder.js';

describe('constructionOf(layers)', () => {
  it('counts sheets in contact as one leaf', () => {
    const { leaves, gaps, kind } = constructionOf([sheet(gypsum, 0.0125), sheet(gypsum, 0.0125)]);
    expect(leaves).toHaveLength(1);
    expect(leaves[0]?.mass).toBeCloseTo(17.5, 9);
    expect(gaps).toEqual([]);
    expect(kind).toBe('single-leaf');
  });

  it('joins the two sheets that touch a frame by a line connection', () => {
    const { layers, connections, leaves, gaps, kind } = constructionOf([
      sheet(plywood, 0.012),
      frame(0.07, 0.05),
      sheet(gypsum, 0.0125),
    ]);
    expect(layers.map((layer) => layer.kind)).toEqual(['plate', 'porous', 'air-gap', 'plate']);
    expect(connections).toEqual([{ between: [0, 3], spacing: 0.6, width: 0.045 }]);
    expect(leaves[0]?.mass).toBeCloseTo(6.6, 9);
    expect(leaves[1]?.mass).toBeCloseTo(8.75, 9);
    expect(gaps[0]?.air).toBeCloseTo(0.02, 9);
    expect(gaps[0]?.fill).toBeCloseTo(0.05, 9);
    expect(kind).toBe('framed-leaves');
  });

  it('has no connection where air keeps the frame off a leaf', () => {
    const before = constructionOf([sheet(plywood, 0.012), airGap(0.02), frame(0.07), sheet(gypsum, 0.0125)]);
    const after = constructionOf([sheet(plywood, 0.012), frame(0.07), airGap(0.02), sheet(gypsum, 0.0125)]);
    expect(before.connections).toEqual([]);
    expect(after.connections).toEqual([]);
    expect(before.kind).toBe('empty-cavity');
    expect(after.gaps[0]?.air).toBeCloseTo(0.09, 9);
  });

  it('lets two frames that face each other across air divide the cavity and tie nothing', () => {
    const { connections, separateFrames, kind } = constructionOf([
      sheet(plywood, 0.012),
      frame(0.07, 0.07),
      airGap(0.02),
      frame(0.07, 0.07),
      sheet(gypsum, 0.0125),
    ]);
    expect(connections).toEqual([]);
    expect(separateFrames).toEqual([
      { between: [0, 4], spacing: 0.6 },
      { between: [0, 4], spacing: 0.6 },
    ]);
    expect(kind).toBe('separate-leaves');
  });

  it('lets no frame divide a cavity it takes up less than half of, is alone at an end of, or ties', () => {
    const separate = (...layers: Parameters<typeof constructionOf>[0]) => constructionOf(layers).separateFrames;
    const [outer, inner] = [sheet(plywood, 0.012), sheet(gypsum, 0.0125)];
    expect(separate(outer, frame(0.07), airGap(0.02), inner)).toHaveLength(1);
    expect(separate(outer, airGap(0.2), frame(0.07), inner)).toEqual([]);
    expect(separate(outer, frame(0.07), inner)).toEqual([]);
    expect(separate(frame(0.07), inner)).toEqual([]);
    expect(separate(outer, frame(0.07))).toEqual([]);
    // The frame outside the first leaf stands in no cavity and must not count in the next one.
    expect(separate(frame(0.07), outer, airGap(0.05), inner)).toEqual([]);
  });

  it('calls a cavity empty when it is deep and has little fibre in it', () => {
    const kind = (...between: Parameters<typeof constructionOf>[0]) =>
      constructionOf([sheet(gypsum, 0.0125), ...between, sheet(gypsum, 0.0125)]).kind;
    expect(kind(airGap(0.1))).toBe('empty-cavity');
    expect(kind(airGap(0.006))).toBe('separate-leaves');
    expect(kind(sheet(wool, 0.05), airGap(0.05))).toBe('separate-leaves');
    expect(kind(frame(0.1))).toBe('framed-leaves');
  });

  it('treats layers of no thickness as absent', () => {
    const { leaves, layers } = constructionOf([byMass(vinyl, 4.9), airGap(0), sheet(wool, 0), sheet(plywood, 0.01)]);
    expect(leaves).toHaveLength(1);
    expect(layers.map((layer) => layer.kind)).toEqual(['limp-sheet', 'plate']);
  });

  it('leaves out air at both ends', () => {
    const { layers } = constructionOf([airGap(0.012), sheet(plywood, 0.018), airGap(0.1)]);
    expect(layers.map((layer) => layer.kind)).toEqual(['plate']);
  });

  it('lets a covering count by its mass', () => {
    const { leaves, layers } = constructionOf([sheet(plywood, 0.018), byMass(carpet, 2)]);
    expect(layers[1]).toEqual({ kind: 'limp-sheet', surfaceMass: 2 });
    expect(leaves).toHaveLength(1);
  });

  it('presses a fill that is thicker than the frame is deep', () => {
    const { layers } = constructionOf([sheet(plywood, 0.012), frame(0.07, 0.1), sheet(gypsum, 0.0125)]);
    expect(layers[1]).toMatchObject({ kind: 'porous', thickness: 0.07 });
    expect(layers).toHaveLength(3);
  });

  it('counts three leaves, and a porous lining at the end as no gap', () => {
    const { leaves, gaps } = constructionOf([
      sheet(plywood, 0.012),
      frame(0.07, 0.07),
      sheet(gypsum, 0.0125),
      airGap(0.05),
      sheet(plywood, 0.009),
      sheet(wool, 0.05),
    ]);
    expect(leaves).toHaveLength(3);
    expect(gaps).toHaveLength(2);
  });
});
