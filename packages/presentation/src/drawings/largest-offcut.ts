import type { PlacedPart } from '@boothwright/assessment';

export interface Rectangle {
  readonly xM: number;
  readonly yM: number;
  readonly widthM: number;
  readonly heightM: number;
}

/** Offcuts narrower than this are not worth keeping, m. Common practice. */
const leastSide = 0.05;
/** More pieces than this on one sheet leave no offcut worth the search. */
const mostPieces = 60;

/**
 * The largest rectangle of the sheet that no piece and no cut of the saw touches. Its edges lie on edges of pieces or of
 * the sheet, so that trying every pair of left and right edges is enough.
 */
export function largestOffcut(
  parts: readonly PlacedPart[],
  sheetWidth: number,
  sheetHeight: number,
  kerf: number,
): Rectangle | undefined {
  if (parts.length > mostPieces) return undefined;
  const boxes = parts.map(({ xM, yM, widthM, heightM }) => ({
    left: xM - kerf,
    right: xM + widthM + kerf,
    low: yM - kerf,
    high: yM + heightM + kerf,
  }));
  const lefts = [0, ...boxes.map(({ right }) => right)].filter((x) => x < sheetWidth);
  const rights = [sheetWidth, ...boxes.map(({ left }) => left)].filter((x) => x > 0);
  let best: Rectangle | undefined;
  for (const left of lefts) {
    for (const right of rights) {
      if (right - left < leastSide) continue;
      const between = boxes
        .filter((box) => box.left < right - 1e-9 && box.right > left + 1e-9)
        .sort((one, other) => one.low - other.low);
      let free = 0;
      for (const { low, high } of [...between, { low: sheetHeight, high: sheetHeight }]) {
        const height = low - free;
        if (height >= leastSide && (right - left) * height > (best?.widthM ?? 0) * (best?.heightM ?? 0) + 1e-9)
          best = { xM: left, yM: free, widthM: right - left, heightM: height };
        free = Math.max(free, high);
      }
    }
  }
  return best;
}
