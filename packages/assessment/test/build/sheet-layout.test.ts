import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { cutsEdgeToEdge } from '../../src/build/cuts-edge-to-edge.js';
import { type LaidOut, layOutSheets, type SheetPiece } from '../../src/build/sheet-layout.js';

const sheet = { width: 1.22, height: 2.44 };
const kerf = 0.003;

/** What every layout must keep, whatever the library does: nothing lost, nothing overlapping, nothing over the edge. */
function problemsOf(laid: LaidOut, pieces: readonly SheetPiece[], size = sheet, gap = kerf): string[] {
  const problems: string[] = [];
  const expected = new Map(pieces.map((piece) => [piece.mark, piece]));
  const seen: string[] = [...laid.tooBig.map(({ mark }) => mark)];
  const rounding = 2e-4;
  for (const { parts } of laid.sheets) {
    for (const [index, part] of parts.entries()) {
      seen.push(part.mark);
      const piece = expected.get(part.mark);
      const [width, height] = part.turned ? [piece?.height, piece?.width] : [piece?.width, piece?.height];
      if (Math.abs((width ?? 0) - part.widthM) > rounding || Math.abs((height ?? 0) - part.heightM) > rounding)
        problems.push(`${part.mark} changed its size`);
      if (part.xM < 0 || part.yM < 0) problems.push(`${part.mark} starts outside`);
      if (part.xM + part.widthM > size.width + 1e-9 || part.yM + part.heightM > size.height + 1e-9)
        problems.push(`${part.mark} reaches over the edge`);
      for (const other of parts.slice(index + 1)) {
        const apartX = Math.max(other.xM - part.xM - part.widthM, part.xM - other.xM - other.widthM);
        const apartY = Math.max(other.yM - part.yM - part.heightM, part.yM - other.yM - other.heightM);
        if (Math.max(apartX, apartY) < gap - 1e-9)
          problems.push(`${part.mark} and ${other.mark} leave no room for the saw`);
      }
    }
  }
  if (
    seen.sort().join() !==
    pieces
      .map(({ mark }) => mark)
      .sort()
      .join()
  )
    problems.push('a piece is lost or doubled');
  return problems;
}

const side = fc.integer({ min: 20, max: 2600 }).map((mm) => mm / 1000);
const somePieces = fc
  .array(fc.record({ width: side, height: side }), { minLength: 1, maxLength: 40 })
  .map((sizes) => sizes.map((size, index): SheetPiece => ({ mark: String(index), ...size })));

describe('layOutSheets(pieces, sheet, kerf)', () => {
  it('loses no piece, overlaps none and keeps every one on its sheet', () => {
    fc.assert(
      fc.property(somePieces, (pieces) => {
        const laid = layOutSheets(pieces, sheet, kerf);
        expect(problemsOf(laid, pieces)).toEqual([]);
        expect(laid.sheets.length).toBeGreaterThanOrEqual(laid.leastSheets);
        const tooBig = pieces.filter(
          ({ width, height }) => Math.min(width, height) > sheet.width || Math.max(width, height) > sheet.height,
        );
        expect(laid.tooBig.map(({ mark }) => mark)).toEqual(tooBig.map(({ mark }) => mark));
      }),
      { numRuns: 150 },
    );
  });

  it('keeps tenths of a millimetre and any saw and sheet', () => {
    const odd = fc.record({
      width: fc.double({ min: 0.3, max: 3, noNaN: true }),
      height: fc.double({ min: 0.3, max: 3, noNaN: true }),
    });
    fc.assert(
      fc.property(
        odd,
        fc.double({ min: 0, max: 0.01, noNaN: true }),
        fc.array(odd, { minLength: 1, maxLength: 12 }),
        (size, gap, sizes) => {
          const pieces = sizes.map((one, index): SheetPiece => ({ mark: String(index), ...one }));
          expect(problemsOf(layOutSheets(pieces, size, gap), pieces, size, gap)).toEqual([]);
        },
      ),
      { numRuns: 100 },
    );
  });

  it('gives the same layout for the same pieces', () => {
    const pieces = Array.from({ length: 25 }, (_, index) => ({
      mark: String(index),
      width: 0.2 + (index % 5) * 0.11,
      height: 0.5 + (index % 7) * 0.2,
    }));
    expect(layOutSheets(pieces, sheet, kerf)).toEqual(layOutSheets(pieces, sheet, kerf));
  });

  it('takes two panels of 608.5 mm out of a sheet of 1220 mm, but not two of 609 mm', () => {
    // 2 x 608.5 + 3 = 1220 fits exactly; 2 x 609 + 3 = 1221 does not.
    const two = (width: number) => ['a', 'b'].map((mark) => ({ mark, width, height: 2.4 }));
    expect(layOutSheets(two(0.6085), sheet, kerf).sheets).toHaveLength(1);
    expect(layOutSheets(two(0.609), sheet, kerf).sheets).toHaveLength(2);
  });

  it('turns a board where that makes it fit', () => {
    const laid = layOutSheets([{ mark: 'a', width: 2.3, height: 0.5 }], sheet, kerf);
    expect(laid.sheets[0]?.parts[0]).toMatchObject({ turned: true, widthM: 0.5, heightM: 2.3 });
  });

  it('lays out hundreds of pieces in well under a second', () => {
    const many = Array.from({ length: 600 }, (_, index) => ({
      mark: String(index),
      width: 0.1 + (index % 9) * 0.05,
      height: 0.2 + (index % 11) * 0.1,
    }));
    const start = performance.now();
    const laid = layOutSheets(many, sheet, kerf);
    expect(performance.now() - start).toBeLessThan(1500);
    expect(problemsOf(laid, many)).toEqual([]);
  });
});

describe('cutsEdgeToEdge(placed)', () => {
  it('knows the pinwheel, which no saw on a rail can start', () => {
    const pinwheel = [
      { x: 0, y: 0, w: 2, h: 1 },
      { x: 2, y: 0, w: 1, h: 2 },
      { x: 1, y: 2, w: 2, h: 1 },
      { x: 0, y: 1, w: 1, h: 2 },
    ];
    expect(cutsEdgeToEdge(pinwheel)).toBe(false);
    expect(cutsEdgeToEdge(pinwheel.slice(1))).toBe(true);
  });
});
