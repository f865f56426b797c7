import type { TableQuantity } from './loaded-table.js';

/** What a cell says: a value, nothing, or why it can't be read. `note` tells of anything but a plain number. */
export type Cell =
  | { readonly kind: 'value'; readonly value: number; readonly note?: string }
  | { readonly kind: 'missing' }
  | { readonly kind: 'bad'; readonly expected: string };

const missing = new Set(['', '-', '–', '—', 'n/a', 'na', 'null', 'nan', '?', '.']);
const plainNumber = /^[+-]?(?:\d+\.?\d*|\.\d+)(?:e[+-]?\d+)?$/i;
const commaNumber = /^([+-]?)(\d*),(\d+)$/;

/** Beyond these a value is not what the table says it is. */
const ranges: Record<TableQuantity, { readonly from: number; readonly to: number; readonly words: string }> = {
  // Reverberation rooms give up to about 1.3 for thick samples.
  absorption: { from: 0, to: 1.5, words: 'a coefficient from 0 to 1.5, or a number with a percent sign' },
  'transmission-loss': { from: -20, to: 200, words: 'a number of decibels from -20 to 200' },
};

/** Reads one cell; `percent` when the heading says that the column is in percent. */
export function readCell(text: string, quantity: TableQuantity, percent: boolean): Cell {
  const range = ranges[quantity];
  let rest = text.trim();
  if (missing.has(rest.toLowerCase())) return { kind: 'missing' };
  const notes: string[] = [];
  let divisor = percent ? 100 : 1;
  if (rest.endsWith('%')) {
    divisor = 100;
    rest = rest.slice(0, -1).trim();
    notes.push('percent');
  } else if (quantity === 'transmission-loss') rest = rest.replace(/ ?db$/i, '');
  if (divisor === 100 && quantity === 'transmission-loss') return { kind: 'bad', expected: range.words };
  // A minus sign as typesetters write it.
  rest = rest.replace(/^−/, '-');
  const comma = commaNumber.exec(rest);
  if (comma !== null) {
    // "1,250" may be one and a quarter or a thousand and more; "0,125" and "12,5" can be read in one way only.
    const [, sign, whole, part] = comma;
    if (part!.length === 3 && whole !== '' && !whole!.startsWith('0')) {
      return { kind: 'bad', expected: `${range.words}, with a point or with a comma that can't be one of thousands` };
    }
    rest = `${sign}${whole === '' ? '0' : whole}.${part}`;
    notes.push('decimal comma');
  }
  if (!plainNumber.test(rest)) return { kind: 'bad', expected: range.words };
  const value = Number(rest) / divisor;
  if (!(value >= range.from && value <= range.to)) return { kind: 'bad', expected: range.words };
  return notes.length === 0 ? { kind: 'value', value } : { kind: 'value', value, note: notes.join(' and ') };
}
