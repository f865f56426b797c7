import type { BoothResult, PanelResult } from '@boothwright/assessment';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { spread } from '../../src/drawings/spread.js';
import { shortened, textWidth, wrapped } from '../../src/drawings/text-box.js';
import { drawingsOf, drawLengths, drawSheets, explodedView, isDrawn } from '../../src/index.js';
import { alcove } from '../fixtures/sample-booth.js';
import { buildUps, specOf } from './booth-text.js';
import { clashes } from './read-drawing.js';

const mm = (from: number, to: number) => fc.integer({ min: from, max: to });
const units = fc.constantFrom('metric' as const, 'imperial' as const);

test('spread(wanted, sizes, gap) keeps order and distance, and leaves alone what has room', () => {
  const labels = fc.array(fc.record({ at: fc.double({ min: 0, max: 300, noNaN: true }), size: mm(5, 60) }), {
    minLength: 1,
    maxLength: 20,
  });
  fc.assert(
    fc.property(labels, (all) => {
      const sorted = [...all].sort((a, b) => a.at - b.at);
      const placed = spread(
        sorted.map(({ at }) => at),
        sorted.map(({ size }) => size),
        4,
      );
      placed.forEach((middle, index) => {
        const before = placed[index - 1];
        if (before === undefined) return;
        const least = (sorted[index]!.size + sorted[index - 1]!.size) / 2 + 4;
        expect(middle - before).toBeGreaterThanOrEqual(least - 1e-6);
      });
      const roomy = sorted.every(
        ({ at, size }, index) => index === 0 || at - sorted[index - 1]!.at >= (size + sorted[index - 1]!.size) / 2 + 4,
      );
      if (roomy)
        placed.forEach((middle, index) => {
          expect(middle).toBeCloseTo(sorted[index]!.at, 6);
        });
    }),
  );
});

test('wrapped(text, room) loses no word that fits and no line is wider than its room', () => {
  fc.assert(
    fc.property(fc.array(fc.string({ maxLength: 30 })), mm(60, 300), (words, room) => {
      for (const line of wrapped(words.join(' '), room)) expect(textWidth(line)).toBeLessThanOrEqual(room);
    }),
  );
  expect(shortened('a name that is far too long', 60)).toMatch(/^a na.*…$/);
});

test('drawings of any booth keep their texts apart and inside the picture', () => {
  const face = fc.constantFrom('front', 'back', 'left', 'right');
  const booth = fc.record({
    width: mm(600, 4000),
    depth: mm(600, 4000),
    height: mm(1500, 3000),
    doors: fc.array(fc.record({ face, width: mm(400, 900), offset: mm(0, 600) }), { maxLength: 2 }),
    windows: fc.array(fc.record({ face, width: mm(100, 900), offset: mm(0, 600), sill: mm(100, 1400) }), {
      maxLength: 3,
    }),
    vents: fc.array(fc.record({ face, duct: mm(50, 250) }), { maxLength: 4 }),
    lining: mm(10, 150),
    mic: mm(100, 500),
    units,
    scale: fc.option(fc.constantFrom(5, 10, 25, 50, 100), { nil: undefined }),
  });
  fc.assert(
    fc.property(booth, (one) => {
      const text = `${buildUps}
site { room 6 m x 6 m x 3.2 m }
booth cell {
  inside ${one.width} mm x ${one.depth} mm x ${one.height} mm
  stands at 0.1 m, 0.2 m
  walls shell
  roof shell
  floor deck
  lining on left, back { mineral-wool-60 ${one.lining} mm }
  ${one.doors.map((door, n) => `door d${n} on ${door.face} { size ${door.width} mm x 1400 mm; offset ${door.offset} mm; leaf shell }`).join('\n  ')}
  ${one.windows.map((pane, n) => `window w${n} on ${pane.face} { size ${pane.width} mm x 300 mm; offset ${pane.offset} mm; sill ${pane.sill} mm; pane shell }`).join('\n  ')}
  ${one.vents.map((vent, n) => `vent v${n} on ${vent.face} { duct ${vent.duct} mm; run 1 m; bends 1 }`).join('\n  ')}
  mic at ${one.mic} mm, ${one.mic} mm, 1200 mm { self-noise 8 dBA }
  mouth at ${one.mic} mm, ${one.mic} mm, 1200 mm
}`;
      const spec = specOf(text);
      expect(spec.booths).toHaveLength(1);
      for (const drawing of drawingsOf({ spec, result: undefined }, one))
        if (isDrawn(drawing)) expect(clashes(drawing.svg), drawing.id).toEqual([]);
    }),
    { numRuns: 60 },
  );
}, 60_000);

test('sheets and lengths with pieces of any size keep their texts apart and inside the picture', () => {
  const pieces = fc.array(fc.record({ w: mm(20, 600), h: mm(20, 800) }), { minLength: 1, maxLength: 20 });
  fc.assert(
    fc.property(pieces, units, (all, unit) => {
      // Side by side on a long sheet, which is as crowded as a packer could make it.
      let x = 0;
      const parts = all.map(({ w, h }, index) => {
        const part = { mark: `${index}a`, xM: x, yM: 0, widthM: w / 1000, heightM: h / 1000, turned: false };
        x += w / 1000 + 0.003;
        return part;
      });
      const base = {
        stock: 'board 12 mm',
        assumedSize: false,
        kerfM: 0.003,
        leastSheets: 1,
        wasteShare: 0.5,
        tooBig: [],
        why: null,
      };
      const layout = { ...base, sheetWidthM: x, sheetHeightM: 0.9, sheets: [{ parts, usedM2: 0.1, edgeToEdge: true }] };
      const cutsM = all.map(({ h }) => h / 1000);
      const stockLengthM = cutsM.reduce((sum, cut) => sum + cut + 0.003, 0.05);
      const lengths = {
        stock: 'stick',
        stockLengthM,
        assumedLength: false,
        kerfM: 0.003,
        patterns: [{ count: 2, cutsM, offcutM: 0.05 }],
        lengths: 2,
        leastLengths: 2,
        wasteShare: 0.1,
        tooLong: [],
        why: null,
      };
      for (const one of [
        ...drawSheets({ sheetLayouts: [layout], parts: [] }, { units: unit }),
        ...drawLengths({ lengthLayouts: [lengths] }, { units: unit }),
      ])
        expect(isDrawn(one) && clashes(one.svg)).toEqual([]);
    }),
    { numRuns: 40 },
  );
}, 60_000);

test('explodedView(result, view) keeps its numbers apart from every side', () => {
  const faces = ['front', 'back', 'left', 'right', 'roof', 'floor'] as const;
  const panels = faces.flatMap((face, side) =>
    [0, 1, 2].map((place): PanelResult => {
      const number = side * 3 + place + 1;
      const at = place * 0.4;
      const upright = { zM: 0, heightM: 2 };
      const boxes = {
        front: { xM: at, yM: 0, widthM: 0.4, depthM: 0.1, ...upright },
        back: { xM: at, yM: 1.1, widthM: 0.4, depthM: 0.1, ...upright },
        left: { xM: 0, yM: at, widthM: 0.1, depthM: 0.4, ...upright },
        right: { xM: 1.1, yM: at, widthM: 0.1, depthM: 0.4, ...upright },
        roof: { xM: at, yM: 0, zM: 2, widthM: 0.4, depthM: 1.2, heightM: 0.1 },
        floor: { xM: at, yM: 0, zM: -0.1, widthM: 0.4, depthM: 1.2, heightM: 0.1 },
      };
      const base = alcove.build.panels[0]!;
      return { ...base, number, name: `${face} ${place + 1}`, face, box: boxes[face], openings: [] };
    }),
  );
  const result: BoothResult = { ...alcove, build: { ...alcove.build, panels } };
  const angle = fc.double({ min: -720, max: 720, noNaN: true });
  fc.assert(
    fc.property(angle, angle, fc.double({ min: 0, max: 2, noNaN: true }), (yaw, pitch, apart) => {
      const view = explodedView('alcove', result, { units: 'metric', yaw, pitch, apart });
      expect(isDrawn(view) && clashes(view.svg)).toEqual([]);
    }),
    { numRuns: 40 },
  );
  const odd = explodedView('alcove', result, { units: 'metric', yaw: Number.NaN, pitch: Number.POSITIVE_INFINITY });
  expect(isDrawn(odd) && clashes(odd.svg)).toEqual([]);
}, 60_000);
