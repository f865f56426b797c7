import type { Material } from '@boothwright/language';
import type { Piece } from './piece.js';

/** What a piece is cut from, as a list names it: `osb 18 mm`, `softwood 45 x 70 mm`, `felt`. */
export function stockName(
  piece: Pick<Piece, 'form' | 'widthM' | 'thicknessM'> & { readonly material: Material },
): string {
  const { material, form, widthM, thicknessM } = piece;
  if (form === 'stick') return `${material.name} ${millimetres(widthM)} x ${millimetres(thicknessM ?? 0)} mm`;
  return thicknessM === undefined || thicknessM <= 0 ? material.name : `${material.name} ${millimetres(thicknessM)} mm`;
}

function millimetres(metres: number): string {
  return String(Number((metres * 1000).toFixed(2)));
}
