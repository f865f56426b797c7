import { MaxRectsBin, Rectangle } from 'maxrects-packer/dist/maxrects-packer.mjs';

/** A piece to place with what it stands for. */
export interface Placeable<T> {
  readonly width: number;
  readonly height: number;
  readonly data: T;
}

/**
 * Pieces in the order given, each on the first of the stock pieces that takes it, by the MaxRects packing of the library.
 * A piece of the size of the one before it can't fit where that did not: the search goes on from there.
 */
export function firstFit<T>(
  pieces: readonly Placeable<T>[],
  stock: { readonly width: number; readonly height: number },
  gap: number,
  allowRotation: boolean,
): MaxRectsBin<T>[] {
  const bins: MaxRectsBin<T>[] = [];
  let from = 0;
  let before: Placeable<T> | undefined;
  for (const piece of pieces) {
    if (piece.width !== before?.width || piece.height !== before.height) from = 0;
    before = piece;
    const rect = new Rectangle<T>(piece.width, piece.height);
    rect.data = piece.data;
    while (from < bins.length && bins[from]?.add(rect) === undefined) from += 1;
    if (from < bins.length) continue;
    const bin = new MaxRectsBin<T>(stock.width, stock.height, gap, {
      smart: false,
      pot: false,
      square: false,
      allowRotation,
    });
    bin.add(rect);
    bins.push(bin);
  }
  return bins;
}
