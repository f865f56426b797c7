import type { Booth } from '@boothwright/language';
import type { PartResult } from '../result/parts-result.js';
import { airBoxes } from './air-boxes.js';
import type { PanelDivision } from './panels.js';
import type { Piece } from './piece.js';
import { piecesOf } from './pieces-of.js';
import { stockName } from './stock-name.js';

/** A row of the cut list with the piece behind it. */
export interface OwnedPart {
  readonly row: PartResult;
  readonly piece: Piece;
}

/** The pieces of door leaves, window panes and boxes in air paths, which need no panels to be known. */
export function loosePieces(booth: Booth): ReturnType<typeof openingPieces> {
  const boxes = airBoxes(booth).filter(({ pieces }) => pieces.length > 0);
  return [
    ...openingPieces(booth),
    ...boxes.map(({ owner, pieces }, index) => ({ owner, mark: `B${index + 1}`, pieces: [...pieces] })),
  ];
}

/** The pieces of door leaves and window panes. */
export function openingPieces(
  booth: Booth,
): { readonly owner: string; readonly mark: string; readonly pieces: Piece[] }[] {
  const sized = (
    layers: Parameters<typeof piecesOf>[0],
    size: { width: { value: number }; height: { value: number } },
  ) => piecesOf(layers, size.width.value, size.height.value);
  return [
    ...booth.doors.map((door, index) => ({
      owner: `door ${door.name}`,
      mark: `D${index + 1}`,
      pieces: sized(door.leaf.layers, door.size),
    })),
    ...booth.windows.map((window, index) => ({
      owner: `window ${window.name}`,
      mark: `W${index + 1}`,
      // A pane is bought cut to size.
      pieces: sized(window.pane.layers, window.size).map(
        (piece): Piece => (piece.form === 'sheet' ? { ...piece, form: 'soft' } : piece),
      ),
    })),
  ];
}

/** The cut list: equal pieces of one owner are one row with a count. */
export function ownedParts(booth: Booth, division: PanelDivision): OwnedPart[] {
  const owners = [
    ...division.built.map(({ result, pieces }) => ({
      owner: `panel ${result.number}, ${result.name}`,
      mark: String(result.number),
      panel: result.number as number | null,
      pieces,
    })),
    ...loosePieces(booth).map((opening) => ({ ...opening, panel: null })),
  ];
  return owners.flatMap(({ owner, mark, panel, pieces }) => {
    const rows = new Map<string, { piece: Piece; count: number }>();
    for (const piece of pieces) {
      const key = [piece.use, piece.material.name, piece.widthM, piece.lengthM, piece.thicknessM ?? '', piece.cutOutM2]
        .map((entry) => (typeof entry === 'number' ? entry.toFixed(4) : entry))
        .join('|');
      const row = rows.get(key);
      if (row === undefined) rows.set(key, { piece, count: 1 });
      else row.count += 1;
    }
    return [...rows.values()].map(({ piece, count }, index) => ({
      piece,
      row: {
        mark: `${mark}${letters(index)}`,
        owner,
        panel,
        use: piece.use,
        material: piece.material.name,
        stock: stockName(piece),
        form: piece.form,
        count,
        widthM: piece.widthM,
        lengthM: piece.lengthM,
        thicknessM: piece.thicknessM ?? null,
        cutOutM2: piece.cutOutM2,
        massKg: piece.massKg,
      },
    }));
  });
}

/** a, b, ... z, aa, ab ... */
function letters(index: number): string {
  const last = String.fromCharCode(97 + (index % 26));
  return index < 26 ? last : `${letters(Math.floor(index / 26) - 1)}${last}`;
}
