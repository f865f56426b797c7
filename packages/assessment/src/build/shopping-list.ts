import type { Booth, Budget, BudgetItem, Price } from '@boothwright/language';
import type { ItemCheck, Money, ShoppingResult, StockResult } from '../result/parts-result.js';
import { textRange } from '../text/text-range.js';
import { airBoxes } from './air-boxes.js';
import { type FittingNeed, fittingChecks } from './fitting-checks.js';
import { covers } from './item-covers.js';
import type { StockRow } from './stock-rows.js';

/** More than this share above the need counts as too much, besides one whole piece. Evidence: judgement. */
export const spareShare = 0.2;

/**
 * What to buy, counted from the layouts, beside what the budget buys. Boards and lengths are whole pieces; soft goods, and
 * boards and sticks that are known by area or run only, are lower bounds without offcuts. Prices come from the item of the
 * budget that names the material, else from the material. Sums are one per currency; what has no price is in none and is
 * named.
 */
export function shoppingOf(
  booth: Booth,
  rows: readonly StockRow[],
  budget: Budget | undefined,
  fittings: readonly FittingNeed[] = [],
): ShoppingResult {
  const items = budget?.items ?? [];
  const stock = rows.map((row) => stockResult(row, items));
  const ofFittings = fittingChecks(fittings, items, verdictOf);
  const checks = [...itemChecks(rows, stock, items), ...ofFittings];
  const reserve = budget?.reserve.value ?? 0;
  // An item whose unit the need cannot be turned into stays as typed.
  const covering = new Set(
    items.filter((item) => rows.some((row, index) => covers(item, row) && stock[index]?.cost !== null)),
  );
  const fitted = new Set(items.filter(({ fitting }) => fitting !== undefined));
  const others = items.filter((item) => !covering.has(item) && !fitted.has(item)).map(sumOf);
  const needed = ofFittings.flatMap((check): Money[] => {
    const price = items.find(({ name }) => name === check.items[0])?.price.value;
    return price === undefined ? [] : [{ currency: price.currency, amount: check.needed * price.amount }];
  });
  const counted = [...stock.flatMap(({ cost }) => (cost === null ? [] : [cost])), ...needed, ...others];
  const withReserve = (sums: readonly Money[]) =>
    sums.map((sum) => ({ ...sum, withReserve: sum.amount * (1 + reserve) }));
  const typed = byCurrency(items.map(sumOf));
  return {
    stock,
    checks,
    counted: withReserve(byCurrency(counted)),
    typed: withReserve(typed),
    groups: items
      .map((item) => {
        const { amount, currency } = sumOf(item);
        const whole = typed.find((sum) => sum.currency === currency)?.amount ?? 0;
        return { name: item.title ?? item.name, currency, amount, share: whole > 0 ? amount / whole : 0 };
      })
      .sort((a, b) => b.share - a.share || b.amount - a.amount),
    withoutPrice: stock.filter(({ cost, items: own }) => cost === null && own.length === 0).map(({ name }) => name),
    leavesOut: [
      ...rows
        .filter((row) => fitsNone(row) > 0)
        .map(
          (row) =>
            `${row.name} is in no sum: pieces of it (${fitsNone(row)}) are bigger than the size that it is sold in.`,
        ),
      ...leavesOut(booth, items),
    ],
  };
}

function sumOf(item: BudgetItem): Money {
  return { currency: item.price.value.currency, amount: item.quantity.value * item.price.value.amount };
}

function byCurrency(sums: readonly Money[]): Money[] {
  const found = new Map<string, number>();
  for (const { currency, amount } of sums) found.set(currency, (found.get(currency) ?? 0) + amount);
  return [...found].sort(([a], [b]) => (a < b ? -1 : 1)).map(([currency, amount]) => ({ currency, amount }));
}

function stockResult(row: StockRow, items: readonly BudgetItem[]): StockResult {
  const amount = amountOf(row);
  const own = items.filter((item) => covers(item, row));
  const price = own[0]?.price.value ?? row.material.price?.value;
  const from = own[0] === undefined ? ('material' as const) : ('item' as const);
  const per = price === undefined ? undefined : (price.per ?? naturalUnit(row));
  // What fits on no sheet or length is bought in another size, whose price nobody knows.
  const cost = price === undefined || per === undefined || fitsNone(row) > 0 ? null : priced(price, per, row, amount);
  // An item without a thickness may be for several rows: it is held against all of them in `checks` and not here.
  const alone = own.filter((item) => item.covers?.thickness !== undefined || row.form === 'stick');
  const bought = alone.length === 0 ? null : sumIn(alone, row, amount);
  return {
    name: row.name,
    material: row.material.name,
    title: row.material.title ?? null,
    form: row.form,
    ...amount,
    net: row.net,
    massKg: row.massKg,
    price:
      price === undefined || per === undefined ? null : { amount: price.amount, currency: price.currency, per, from },
    cost,
    bought,
    spare: bought === null ? null : bought - amount.quantity,
    items: own.map(({ name }) => name),
  };
}

type Amount = Pick<StockResult, 'unit' | 'quantity' | 'atLeast' | 'wasteShare'>;

/** Whole sheets or lengths where pieces are laid out; otherwise area or run. */
export function amountOf({ form, net, parts, uses, sheets, lengths, material }: StockRow): Amount {
  const areaUsed = uses.reduce((sum, use) => sum + use.amount, 0);
  if (form === 'sheet' && sheets !== undefined && sheets.why === null) {
    const size = sheets.sheetWidthM * sheets.sheetHeightM;
    const more = Math.ceil(areaUsed / size - 1e-9);
    const atLeast = uses.length > 0 || sheets.tooBig.length > 0;
    return {
      unit: 'sheet',
      quantity: sheets.sheets.length + more,
      atLeast,
      wasteShare: uses.length > 0 ? null : sheets.wasteShare,
    };
  }
  if (form === 'stick' && lengths !== undefined && lengths.why === null) {
    const more = Math.ceil(areaUsed / lengths.stockLengthM - 1e-9);
    const atLeast = uses.length > 0 || lengths.tooLong.length > 0;
    return {
      unit: 'length',
      quantity: lengths.lengths + more,
      atLeast,
      wasteShare: uses.length > 0 ? null : lengths.wasteShare,
    };
  }
  const size = material.sheet === undefined ? 0 : material.sheet.width.value * material.sheet.height.value;
  if (form === 'sheet' && size > 0)
    return { unit: 'sheet', quantity: Math.ceil(net / size - 1e-9), atLeast: true, wasteShare: null };
  const stock = material.stockLength?.value ?? 0;
  if (form === 'stick' && stock > 0)
    return { unit: 'length', quantity: Math.ceil(net / stock - 1e-9), atLeast: true, wasteShare: null };
  return {
    unit: form === 'stick' ? 'm' : 'm2',
    quantity: net,
    atLeast: parts.length > 0 || uses.length > 0,
    wasteShare: null,
  };
}

/** Pieces that no sheet or length of their size yields. */
function fitsNone({ sheets, lengths }: StockRow): number {
  return (sheets?.tooBig.length ?? 0) + (lengths?.tooLong.length ?? 0);
}

/** In what a number without a unit counts: boards, lengths, square metres of soft goods. */
function naturalUnit(row: StockRow): string {
  return row.form === 'sheet' ? 'sheet' : row.form === 'stick' ? 'piece' : 'm2';
}

/** How much the need is in the unit of a price or item; null when there is no way to tell. */
export function quantityIn(per: string, row: StockRow, amount: Amount): number | null {
  const sheetArea = row.sheets === undefined ? sizeOf(row) : row.sheets.sheetWidthM * row.sheets.sheetHeightM;
  const stockLength = row.lengths?.stockLengthM ?? row.material.stockLength?.value ?? null;
  const whole = amount.unit === 'sheet' || amount.unit === 'length';
  switch (per) {
    case 'sheet':
      return amount.unit === 'sheet' ? amount.quantity : null;
    case 'piece':
      return whole ? amount.quantity : null;
    case 'm2':
      if (amount.unit === 'm2') return amount.quantity;
      return amount.unit === 'sheet' && sheetArea !== null ? amount.quantity * sheetArea : null;
    case 'm':
      if (amount.unit === 'm') return amount.quantity;
      return amount.unit === 'length' && stockLength !== null ? amount.quantity * stockLength : null;
    case 'm3': {
      const section = row.form === 'stick' ? stickSection(row) : row.thicknessM;
      return section === undefined || section <= 0 ? null : grossAmount(row, amount, sheetArea, stockLength) * section;
    }
    case 'kg':
      return row.massKg === null || row.net <= 0
        ? null
        : (row.massKg / row.net) * grossAmount(row, amount, sheetArea, stockLength);
    default:
      return null;
  }
}

function sizeOf({ material }: StockRow): number | null {
  return material.sheet === undefined ? null : material.sheet.width.value * material.sheet.height.value;
}

function stickSection(row: StockRow): number | undefined {
  const piece = row.parts[0]?.piece ?? row.uses[0];
  return piece?.thicknessM === undefined ? undefined : piece.widthM * piece.thicknessM;
}

/** m2 or m bought. */
function grossAmount(row: StockRow, amount: Amount, sheetArea: number | null, stockLength: number | null): number {
  if (amount.unit === 'sheet') return amount.quantity * (sheetArea ?? 0);
  if (amount.unit === 'length') return amount.quantity * (stockLength ?? 0);
  return row.net;
}

function priced(price: Price, per: string, row: StockRow, amount: Amount): Money | null {
  const quantity = quantityIn(per, row, amount);
  return quantity === null ? null : { amount: quantity * price.amount, currency: price.currency };
}

/** What items buy, in the unit of the row; null when their unit cannot be turned into it. */
function sumIn(items: readonly BudgetItem[], row: StockRow, amount: Amount): number | null {
  let sum = 0;
  for (const item of items) {
    const per = item.price.value.per ?? naturalUnit(row);
    const need = quantityIn(per, row, amount);
    if (need === null || amount.quantity <= 0) return null;
    sum += need > 0 ? (item.quantity.value / need) * amount.quantity : 0;
  }
  return sum;
}

function itemChecks(
  rows: readonly StockRow[],
  stock: readonly StockResult[],
  items: readonly BudgetItem[],
): ItemCheck[] {
  const groups = new Map<string, BudgetItem[]>();
  for (const item of items) {
    if (item.covers === undefined) continue;
    const key = `${item.covers.material.name} ${item.covers.thickness?.value ?? ''} ${item.price.value.per ?? ''}`;
    groups.set(key, [...(groups.get(key) ?? []), item]);
  }
  return [...groups.values()].flatMap((group): ItemCheck[] => {
    const first = group[0] as BudgetItem;
    const bought = group.reduce((sum, item) => sum + item.quantity.value, 0);
    const own = rows.flatMap((row, index) =>
      covers(first, row) ? [{ row, amount: stock[index] as StockResult }] : [],
    );
    const base = {
      items: group.map(({ name }) => name),
      range: textRange(first.range),
      material: first.covers?.material.name ?? '',
      bought,
    };
    if (own.length === 0) {
      const unit = first.price.value.per ?? 'piece';
      return [{ ...base, unit, needed: 0, atLeast: false, verdict: 'unused' }];
    }
    const unit = first.price.value.per ?? naturalUnit((own[0] as { row: StockRow }).row);
    if (own.some(({ row }) => fitsNone(row) > 0)) return [];
    const needs = own.map(({ row, amount }) => quantityIn(unit, row, amount));
    if (needs.includes(null)) return [];
    const needed = needs.reduce((sum: number, need) => sum + (need as number), 0);
    const atLeast = own.some(({ amount }) => amount.atLeast);
    return [{ ...base, unit, needed, atLeast, verdict: verdictOf(bought, needed) }];
  });
}

function verdictOf(bought: number, needed: number): ItemCheck['verdict'] {
  if (bought < needed - 1e-9) return 'too-few';
  return bought > Math.ceil(needed * (1 + spareShare) - 1e-9) && bought - needed > 1 ? 'too-many' : 'enough';
}

function leavesOut(booth: Booth, items: readonly BudgetItem[]): string[] {
  const unlinked = items.filter(({ covers: what, fitting }) => what === undefined && fitting === undefined).length;
  return [
    ...(unlinked > 0
      ? [
          `${unlinked} ${unlinked === 1 ? 'item of the budget does not say what it is' : 'items of the budget do not say what they are'} \`for\`: taken as typed and not counted against the parts.`,
        ]
      : []),
    'Screws, glue, hinges, latches, seals and tools are only in it where the budget lists them.',
    ...(booth.vents.length > 0 ? ['Ducts, grilles and fans are only in it where the budget lists them.'] : []),
    ...airBoxes(booth)
      .filter(({ board }) => board === undefined)
      .map(({ owner }) => `The ${owner} is not in it: the text does not say what it is built of.`),
    'Prices without delivery and tax unless they are in the prices of the text.',
  ];
}
