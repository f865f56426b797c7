import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { boothNamed, fromText } from './air-text.js';

const mm = (min: number, max: number) => fc.integer({ min, max });

describe('the layout of a whole booth with boxes in its air paths', () => {
  it('holds every part once, on its sheet, apart by the saw, and never beats the area of the parts', () => {
    fc.assert(
      fc.property(mm(250, 900), mm(130, 400), mm(130, 400), mm(350, 1200), (long, broad, low, width) => {
        const { build } = boothNamed(
          fromText(`chamber ${long} mm x ${broad} mm x ${low} mm of osb 18 mm lined duct-liner 25 mm`, {
            panels: `panels { width ${width} mm }`,
          }),
        );
        for (const layout of build.sheetLayouts) {
          const wanted = new Map(
            build.parts
              .filter(({ stock, form }) => stock === layout.stock && form === 'sheet')
              .map(({ mark, count }) => [mark, count]),
          );
          const placed = layout.sheets.flatMap(({ parts }) => parts);
          for (const { mark } of [...placed, ...layout.tooBig]) wanted.set(mark, (wanted.get(mark) ?? 0) - 1);
          expect([...wanted.values()].every((left) => left === 0)).toBe(true);
          for (const { parts } of layout.sheets) {
            parts.forEach((a, index) => {
              expect(a.xM).toBeGreaterThanOrEqual(0);
              expect(a.yM).toBeGreaterThanOrEqual(0);
              expect(a.xM + a.widthM).toBeLessThanOrEqual(layout.sheetWidthM + 1e-9);
              expect(a.yM + a.heightM).toBeLessThanOrEqual(layout.sheetHeightM + 1e-9);
              for (const b of parts.slice(0, index)) {
                const apart = Math.max(
                  a.xM - b.xM - b.widthM,
                  b.xM - a.xM - a.widthM,
                  a.yM - b.yM - b.heightM,
                  b.yM - a.yM - a.heightM,
                );
                expect(apart).toBeGreaterThanOrEqual(layout.kerfM - 1e-9);
              }
            });
          }
          const area = placed.reduce((sum, { widthM, heightM }) => sum + widthM * heightM, 0);
          const sheet = layout.sheetWidthM * layout.sheetHeightM;
          expect(layout.sheets.length).toBeGreaterThanOrEqual(Math.ceil(area / sheet - 1e-6));
          expect(layout.leastSheets).toBeLessThanOrEqual(layout.sheets.length);
          // Cut-outs are waste too.
          expect(layout.wasteShare).toBeGreaterThanOrEqual(1 - area / (layout.sheets.length * sheet) - 1e-9);
        }
      }),
      { numRuns: 25 },
    );
  });
});
