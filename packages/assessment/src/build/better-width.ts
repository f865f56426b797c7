import type { Booth, Budget } from '@boothwright/language';
import type { Memo } from '../memo/memo.js';
import type { SheetLayout, ShoppingResult } from '../result/parts-result.js';
import type { BoothResult } from '../result/result-document.js';
import { ownedParts } from './owned-parts.js';
import { panelsOf } from './panels.js';
import { shoppingOf } from './shopping-list.js';
import { stockRows } from './stock-rows.js';

/** Narrower than this share of the widest panel is another booth, not a better cut. Evidence: judgement. */
export const leastWidthShare = 0.8;

/** Layouts with at least this many sheets above the area of their parts are worth a look. Evidence: judgement. */
export const worthwhileSheets = 2;

/** What a smaller panel width saves. */
export interface BetterWidth {
  /** m */
  readonly width: number;
  /** m, of the widest panel as cut now */
  readonly widest: number;
  /** By kind of board, those whose count changes. */
  readonly boards: readonly { readonly name: string; readonly before: number; readonly after: number }[];
  readonly sheets: number;
  /** Lengths of timber that narrower panels take more; negative for fewer. */
  readonly moreLengths: number;
  /** Boards and timber together; null where something that changes has no price or currencies differ. */
  readonly money: { readonly amount: number; readonly currency: string } | null;
}

/**
 * The panel width, a little below the present one, whose cutting layout takes the fewest sheets; null when none saves
 * `worthwhileSheets`. Looked at are the widths of which two, three or four come out of a sheet side by side with the cut of
 * the saw between them: (sheet + kerf) / n - kerf. Every one is laid out anew, with its studs, so that what narrower panels
 * cost in timber is in the sum. Wider panels are not looked at: they would be heavier.
 */
export function betterWidth(
  booth: Booth,
  build: BoothResult['build'],
  budget: Budget | undefined,
  memo: Memo,
): BetterWidth | null {
  const { panels } = booth;
  const wasteful = build.sheetLayouts.filter((layout) => layout.sheets.length - layout.leastSheets >= worthwhileSheets);
  const plain = build.panels.filter(({ openings }) => openings.length === 0);
  if (panels === undefined || wasteful.length === 0 || plain.length === 0) return null;
  const { parts, shopping, sheetLayouts } = build;
  // Everything that the faces, their build-ups and the prices say is in the parts and in what is bought.
  const key = JSON.stringify([build.panels, parts, shopping.stock, sheetLayouts[0]?.kerfM]);
  return memo.of(`better width ${key}`, () => bestOf(booth, panels, build, wasteful, budget, memo));
}

function bestOf(
  booth: Booth,
  panels: NonNullable<Booth['panels']>,
  build: BoothResult['build'],
  wasteful: readonly SheetLayout[],
  budget: Budget | undefined,
  memo: Memo,
): BetterWidth | null {
  const plain = build.panels.filter(({ openings }) => openings.length === 0);
  const widest = Math.max(...plain.map(({ widthM }) => widthM));
  const sheetsNow = build.sheetLayouts.reduce((sum, layout) => sum + layout.sheets.length, 0);
  let best: BetterWidth | null = null;
  for (const width of candidates(wasteful, widest)) {
    const cut = { ...booth, panels: { ...panels, width: { ...panels.width, value: width } } };
    const division = panelsOf(cut);
    if (division.why !== null) continue;
    const parts = ownedParts(cut, division);
    // Boards alone first: the timber is worth laying out only where they gain.
    const boards = parts.filter(({ piece }) => piece.form === 'sheet');
    const laid = stockRows(cut, division, boards, budget, memo).flatMap(({ sheets }) => sheets?.sheets.length ?? 0);
    if (sheetsNow - laid.reduce((sum, count) => sum + count, 0) < worthwhileSheets) continue;
    const rows = stockRows(cut, division, parts, budget, memo);
    const found = compared(build.shopping, shoppingOf(cut, rows, budget), width, widest);
    if (found.sheets < worthwhileSheets || (found.money !== null && found.money.amount <= 0)) continue;
    if (best === null || isBetter(found, best)) best = found;
  }
  return best;
}

function candidates(layouts: readonly SheetLayout[], widest: number): number[] {
  const widths = layouts.flatMap(({ sheetWidthM, sheetHeightM, kerfM }) =>
    [sheetWidthM, sheetHeightM].flatMap((side) =>
      [2, 3, 4].map((count) => Math.floor(((side + kerfM) / count - kerfM) * 1000 + 1e-6) / 1000),
    ),
  );
  return [...new Set(widths)]
    .filter((width) => width < widest - 1e-9 && width >= leastWidthShare * widest)
    .sort((a, b) => b - a);
}

function compared(before: ShoppingResult, after: ShoppingResult, width: number, widest: number): BetterWidth {
  const names = [...new Set([...before.stock, ...after.stock].map(({ name }) => name))];
  const pairs = names.map((name) => ({
    name,
    was: before.stock.find((row) => row.name === name),
    now: after.stock.find((row) => row.name === name),
  }));
  const counted = (unit: 'sheet' | 'length') =>
    pairs
      .filter(({ was, now }) => (was ?? now)?.unit === unit)
      .map(({ name, was, now }) => ({ name, before: was?.quantity ?? 0, after: now?.quantity ?? 0 }))
      .filter((row) => row.before !== row.after);
  const boards = counted('sheet');
  const lengths = counted('length');
  // Soft goods hardly change, and are lower bounds without offcuts.
  const changed = pairs.filter(({ name }) => [...boards, ...lengths].some((row) => row.name === name));
  const costs = changed.flatMap(({ was, now }) => [was?.cost ?? null, now?.cost ?? null]);
  const currencies = new Set(costs.map((cost) => cost?.currency));
  const sum = (of: 'was' | 'now') => changed.reduce((total, pair) => total + (pair[of]?.cost?.amount ?? 0), 0);
  const [currency] = currencies;
  return {
    width,
    widest,
    boards,
    sheets: boards.reduce((total, row) => total + row.before - row.after, 0),
    moreLengths: lengths.reduce((total, row) => total + row.after - row.before, 0),
    money:
      costs.includes(null) || currencies.size !== 1 || currency === undefined
        ? null
        : { amount: sum('was') - sum('now'), currency },
  };
}

function isBetter(found: BetterWidth, than: BetterWidth): boolean {
  if (found.money !== null && than.money !== null && Math.abs(found.money.amount - than.money.amount) > 1e-9)
    return found.money.amount > than.money.amount;
  return found.sheets > than.sheets;
}
