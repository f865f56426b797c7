import type { PlacedPart } from '../result/parts-result.js';
import { cutsEdgeToEdge } from './cuts-edge-to-edge.js';
import { firstFit } from './first-fit.js';

/** A piece to lay out; equal pieces may share a mark. */
export interface SheetPiece {
  readonly mark: string;
  /** m */
  readonly width: number;
  readonly height: number;
}

export interface LaidSheet {
  readonly parts: readonly PlacedPart[];
  readonly usedM2: number;
  readonly edgeToEdge: boolean;
}

export interface LaidOut {
  readonly sheets: readonly LaidSheet[];
  /** Pieces that fit on no sheet, turned or not; in the order given. */
  readonly tooBig: readonly SheetPiece[];
  /** No layout needs fewer sheets for the pieces laid out. */
  readonly leastSheets: number;
}

/** Sizes are laid out in whole tenths of a millimetre, so that no rounding makes two pieces overlap. */
const perMetre = 10_000;

/** From this many pieces on only the first order is tried. */
const fewPieces = 160;

/**
 * Pieces on sheets of one size with the cut of the saw between them, by the MaxRects packing of the library. It is a
 * heuristic: several orders of the pieces are tried, and the layout with the fewest sheets, then the most sheets that can
 * be cut from edge to edge, is kept; `leastSheets`, total area over sheet area, says how far it can be from the best.
 * Boards may be turned.
 */
export function layOutSheets(
  pieces: readonly SheetPiece[],
  sheet: { width: number; height: number },
  kerf: number,
): LaidOut {
  const width = Math.floor(sheet.width * perMetre + 1e-6);
  const height = Math.floor(sheet.height * perMetre + 1e-6);
  const gap = Math.ceil(kerf * perMetre - 1e-6);
  const rects = pieces.map((piece) => ({
    piece,
    width: Math.max(1, Math.round(piece.width * perMetre)),
    height: Math.max(1, Math.round(piece.height * perMetre)),
  }));
  const fits = ({ width: w, height: h }: { width: number; height: number }) =>
    (w <= width && h <= height) || (h <= width && w <= height);
  const small = rects.filter(fits);
  const tooBig = rects.filter((rect) => !fits(rect)).map(({ piece }) => piece);
  if (small.length === 0) return { sheets: [], tooBig, leastSheets: 0 };
  const area = small.reduce((sum, rect) => sum + rect.width * rect.height, 0);
  const leastSheets = Math.ceil(area / (width * height) - 1e-9);

  const orders = small.length > fewPieces ? sortings.slice(0, 1) : sortings;
  let best: LaidSheet[] | undefined;
  for (const order of orders) {
    const laid = pack([...small].sort(order), width, height, gap);
    if (best === undefined || isBetter(laid, best)) best = laid;
    if (best.length === leastSheets && best.every((one) => one.edgeToEdge)) break;
  }
  return { sheets: best ?? [], tooBig, leastSheets };
}

interface Rect {
  readonly piece: SheetPiece;
  readonly width: number;
  readonly height: number;
}

/** Orders in which pieces are laid; ties keep the order given, so that the same pieces give the same layout. */
const sortings: readonly ((a: Rect, b: Rect) => number)[] = [
  (a, b) => b.width * b.height - a.width * a.height || b.height - a.height,
  (a, b) => Math.min(b.width, b.height) - Math.min(a.width, a.height) || b.width * b.height - a.width * a.height,
  (a, b) => b.width - a.width || b.height - a.height,
  (a, b) => Math.max(b.width, b.height) - Math.max(a.width, a.height) || b.width * b.height - a.width * a.height,
  (a, b) => b.height - a.height || b.width - a.width,
];

function isBetter(laid: readonly LaidSheet[], than: readonly LaidSheet[]): boolean {
  if (laid.length !== than.length) return laid.length < than.length;
  const awkward = (sheets: readonly LaidSheet[]) => sheets.filter((sheet) => !sheet.edgeToEdge).length;
  return awkward(laid) < awkward(than);
}

function pack(rects: readonly Rect[], width: number, height: number, gap: number): LaidSheet[] {
  const pieces = rects.map(({ piece, width: w, height: h }) => ({ width: w, height: h, data: piece }));
  return firstFit(pieces, { width, height }, gap, true).map((bin) => {
    const placed = bin.rects.map(({ x, y, width: w, height: h, rot, data }) => ({ x, y, w, h, rot, data }));
    return {
      usedM2: placed.reduce((sum, { w, h }) => sum + w * h, 0) / perMetre ** 2,
      edgeToEdge: cutsEdgeToEdge(placed),
      parts: placed.map(({ x, y, w, h, rot, data }) => ({
        mark: data.mark,
        xM: x / perMetre,
        yM: y / perMetre,
        widthM: w / perMetre,
        heightM: h / perMetre,
        turned: rot,
      })),
    };
  });
}
