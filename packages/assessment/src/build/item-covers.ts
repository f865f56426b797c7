import type { BudgetItem } from '@boothwright/language';
import type { StockRow } from './stock-rows.js';

/** Sizes closer than this are the same, m. */
const sameSize = 0.5e-3;

/**
 * Whether the item says that it buys what the row is: its material, its thickness where it gives one, and of a stick its
 * cross-section where the title names one. Timber of another section has another price.
 */
export function covers(item: BudgetItem, row: StockRow): boolean {
  const { covers: what } = item;
  if (what === undefined || what.material.name !== row.material.name) return false;
  const thickness = what.thickness?.value;
  if (thickness !== undefined && (row.thicknessM === undefined || Math.abs(thickness - row.thicknessM) >= sameSize))
    return false;
  const [own, wanted] = [sectionInTitle(item), sectionOf(row)];
  return own === null || wanted === null || own.every((side, i) => Math.abs(side - (wanted[i] as number)) < sameSize);
}

/** Sides of the cross-section of a stick, m, the shorter first; null for anything else and where it is not known. */
function sectionOf({ form, parts, uses }: StockRow): readonly [number, number] | null {
  const piece = parts[0]?.piece ?? uses[0];
  if (form !== 'stick' || piece?.thicknessM === undefined) return null;
  return shorterFirst(piece.widthM, piece.thicknessM);
}

/**
 * The cross-section that a title such as `45 x 70 mm softwood` or `45 x 70 x 2400 mm` names, m, the shorter side first;
 * null without one. Of three sizes the longest is the length.
 */
export function sectionInTitle({ title }: BudgetItem): readonly [number, number] | null {
  const number = String.raw`(\d+(?:[.,]\d+)?)\s*(?:mm|cm)?`;
  const pattern = new RegExp(
    String.raw`(?<![\d.,])${number}\s*[x×*]\s*${number}(?:\s*[x×*]\s*${number})?(?<=(mm|cm))`,
    'i',
  );
  const found = pattern.exec(title ?? '');
  if (found === null) return null;
  const scale = found[4]?.toLowerCase() === 'cm' ? 0.01 : 0.001;
  const [a, b] = found
    .slice(1, 4)
    .filter((size) => size !== undefined)
    .map((size) => Number(size.replace(',', '.')) * scale)
    .sort((one, two) => one - two) as [number, number];
  return [a, b];
}

function shorterFirst(a: number, b: number): readonly [number, number] {
  return a <= b ? [a, b] : [b, a];
}
