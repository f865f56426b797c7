import type { Booth, Budget, Material } from '@boothwright/language';
import type { Memo } from '../memo/memo.js';
import type { LengthLayout, SheetLayout } from '../result/parts-result.js';
import { airBoxes } from './air-boxes.js';
import { airLiningUses } from './air-lining-uses.js';
import { type AreaUse, faceUses, liningUses } from './area-uses.js';
import { type LaidLengths, layOutLengths } from './length-layout.js';
import type { OwnedPart } from './owned-parts.js';
import type { PanelDivision } from './panels.js';
import { type LaidOut, layOutSheets } from './sheet-layout.js';
import { stockName } from './stock-name.js';

/** Size of a board whose text gives none, m. Evidence: common practice, the sheet most boards are also sold as. */
export const assumedSheet = { width: 1.22, height: 2.44 } as const;

/** Length of timber whose text gives none, m. Evidence: common practice, a length that most yards keep. */
export const assumedStockLength = 2.4;

/** Width of the cut where the text has no budget to say it, m. Evidence: common practice, a hand-held circular saw. */
export const assumedKerf = 0.003;

/** More pieces of one kind than this are counted by area alone. */
export const mostPieces = 600;

/** One kind of thing to buy with what is cut from it. */
export interface StockRow {
  readonly name: string;
  readonly material: Material;
  readonly form: 'sheet' | 'stick' | 'soft';
  readonly thicknessM: number | undefined;
  /** m2, or m of sticks, of pieces and of areas */
  readonly net: number;
  readonly massKg: number | null;
  readonly parts: readonly OwnedPart[];
  readonly uses: readonly AreaUse[];
  readonly sheets: SheetLayout | undefined;
  readonly lengths: LengthLayout | undefined;
}

/** Everything that the parts are cut from, with its layout. */
export function stockRows(
  booth: Booth,
  division: PanelDivision,
  parts: readonly OwnedPart[],
  budget: Budget | undefined,
  memo: Memo,
): StockRow[] {
  // Where only doors and windows come in pieces, no size is assumed: a layout of so little would mislead.
  const whole = division.why === null;
  const kerf = budget?.kerf.value ?? assumedKerf;
  const uses = [
    ...(division.why === null ? [] : faceUses(booth)),
    ...liningUses(booth),
    ...airLiningUses(booth),
    ...airBoxes(booth).flatMap(({ boards }) => boards),
  ];
  const kinds = new Map<string, { material: Material; form: StockRow['form']; parts: OwnedPart[]; uses: AreaUse[] }>();
  const kind = (name: string, material: Material, form: StockRow['form']) => {
    const found = kinds.get(name) ?? { material, form, parts: [], uses: [] };
    kinds.set(name, found);
    return found;
  };
  for (const part of parts) kind(part.row.stock, part.piece.material, part.piece.form).parts.push(part);
  for (const use of uses) kind(stockName(use), use.material, use.form).uses.push(use);
  return [...kinds].map(([name, { material, form, parts: own, uses: areas }]) => {
    const masses = [...own.map(({ row }) => times(row.massKg, row.count)), ...areas.map((use) => use.massKg)];
    return {
      name,
      material,
      form,
      thicknessM: own[0]?.piece.thicknessM ?? areas[0]?.thicknessM,
      net:
        own.reduce((sum, { row }) => sum + row.count * (form === 'stick' ? row.lengthM : netArea(row)), 0) +
        areas.reduce((sum, use) => sum + use.amount, 0),
      massKg: masses.includes(null) ? null : masses.reduce((sum: number, mass) => sum + (mass as number), 0),
      parts: own,
      uses: areas,
      sheets:
        form === 'sheet' && own.length > 0 && (whole || material.sheet !== undefined)
          ? sheetLayout(name, material, own, kerf, memo)
          : undefined,
      lengths:
        form === 'stick' && own.length > 0 && (whole || material.stockLength !== undefined)
          ? lengthLayout(name, material, own, kerf, memo)
          : undefined,
    };
  });
}

function times(mass: number | null, count: number): number | null {
  return mass === null ? null : mass * count;
}

function netArea(row: OwnedPart['row']): number {
  return row.widthM * row.lengthM - row.cutOutM2;
}

function sheetLayout(
  stock: string,
  material: Material,
  parts: readonly OwnedPart[],
  kerf: number,
  memo: Memo,
): SheetLayout {
  const size = {
    width: material.sheet?.width.value ?? assumedSheet.width,
    height: material.sheet?.height.value ?? assumedSheet.height,
  };
  const base = {
    stock,
    sheetWidthM: size.width,
    sheetHeightM: size.height,
    assumedSize: material.sheet === undefined,
    kerfM: kerf,
  };
  const pieces = parts.flatMap(({ row }) =>
    Array.from({ length: row.count }, () => ({ mark: row.mark, width: row.widthM, height: row.lengthM })),
  );
  if (pieces.length > mostPieces) {
    const why = `${pieces.length} pieces are too many to lay out`;
    return { ...base, sheets: [], leastSheets: 0, wasteShare: 0, tooBig: [], why };
  }
  const laid = memo.of(
    `sheets ${JSON.stringify([pieces, size, kerf])}`,
    (): LaidOut => layOutSheets(pieces, size, kerf),
  );
  const byMark = new Map(parts.map(({ row }) => [row.mark, row]));
  const cutOut = laid.sheets
    .flatMap((sheet) => sheet.parts)
    .reduce((sum, { mark }) => sum + (byMark.get(mark)?.cutOutM2 ?? 0), 0);
  const used = laid.sheets.reduce((sum, sheet) => sum + sheet.usedM2, 0) - cutOut;
  return {
    ...base,
    sheets: laid.sheets,
    leastSheets: laid.leastSheets,
    wasteShare: laid.sheets.length === 0 ? 0 : 1 - used / (laid.sheets.length * size.width * size.height),
    tooBig: laid.tooBig.map(({ mark, width, height }) => ({
      mark,
      owner: byMark.get(mark)?.owner ?? '',
      widthM: width,
      lengthM: height,
    })),
    why: null,
  };
}

function lengthLayout(
  stock: string,
  material: Material,
  parts: readonly OwnedPart[],
  kerf: number,
  memo: Memo,
): LengthLayout {
  const stockLengthM = material.stockLength?.value ?? assumedStockLength;
  const base = { stock, stockLengthM, assumedLength: material.stockLength === undefined, kerfM: kerf };
  const pieces = parts.flatMap(({ row }) => Array<number>(row.count).fill(row.lengthM));
  if (pieces.length > mostPieces) {
    const why = `${pieces.length} pieces are too many to lay out`;
    return { ...base, patterns: [], lengths: 0, leastLengths: 0, wasteShare: 0, tooLong: [], why };
  }
  const laid = memo.of(
    `lengths ${JSON.stringify([pieces, stockLengthM, kerf])}`,
    (): LaidLengths => layOutLengths(pieces, stockLengthM, kerf),
  );
  const used = laid.patterns.reduce((sum, { count, cuts }) => sum + count * total(cuts), 0);
  return {
    ...base,
    patterns: laid.patterns.map(({ count, cuts }) => ({
      count,
      cutsM: cuts,
      offcutM: Math.max(0, stockLengthM - total(cuts) - kerf * cuts.length),
    })),
    lengths: laid.lengths,
    leastLengths: laid.leastLengths,
    wasteShare: laid.lengths === 0 ? 0 : 1 - used / (laid.lengths * stockLengthM),
    tooLong: parts
      .filter(({ row }) => laid.tooLong.includes(row.lengthM))
      .map(({ row }) => ({ mark: row.mark, owner: row.owner, lengthM: row.lengthM })),
    why: null,
  };
}

function total(lengths: readonly number[]): number {
  return lengths.reduce((sum, length) => sum + length, 0);
}
