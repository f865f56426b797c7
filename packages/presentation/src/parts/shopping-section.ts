import type { BoothResult } from '@boothwright/assessment';
import { formatFigures, formatNumber } from '../numbers/format-number.js';
import { printable } from '../text/printable.js';
import { joinLines, section } from '../text/section.js';
import type { TextStyle } from '../text/text-style.js';
import { textTable } from '../text/text-table.js';
import { wrapText } from '../text/wrap-text.js';
import { costText, shareText } from './stock-words.js';

const right = 'right' as const;
const singular = { sheet: 'sheet', length: 'length', m2: 'm²', m: 'm' } as const;
const units = { sheet: 'sheets', length: 'lengths', m2: 'm²', m: 'm' } as const;

/** What to buy with its waste and price, beside what the budget buys, and where the money goes. */
export function shoppingSection(
  { shopping, cost }: BoothResult['build'],
  suffix: string,
  style: TextStyle,
): string | undefined {
  const { stock, checks, counted, typed, groups, withoutPrice, leavesOut } = shopping;
  if (stock.length === 0 && typed.length === 0) return undefined;
  const lines = (text: string) => wrapText(text, style.width, '  ', '    ');
  const table = textTable(
    [
      { head: 'need', align: right },
      { head: '' },
      { head: 'what' },
      { head: 'waste', align: right },
      { head: 'price' },
      { head: 'sum', align: right },
      { head: 'budget', align: right },
    ],
    stock.map((row) => [
      `${row.atLeast ? '≥ ' : ''}${row.unit === 'sheet' || row.unit === 'length' ? formatNumber(row.quantity) : formatNumber(row.quantity, 1)}`,
      row.quantity === 1 ? singular[row.unit] : units[row.unit],
      printable(row.name),
      row.wasteShare === null ? '' : shareText(row.wasteShare),
      row.price === null ? '–' : `${costText(row.price)} per ${row.price.per === 'm2' ? 'm²' : row.price.per}`,
      row.cost === null ? '–' : costText(row.cost),
      row.bought === null ? '' : formatFigures(row.bought),
    ]),
  );
  const short = checks
    .filter(({ verdict }) => verdict !== 'enough')
    .map(({ items, verdict, bought, needed, atLeast }) => {
      const names = items.map(printable).join(' and ');
      if (verdict === 'unused') return `${names}: no part uses it`;
      const words = verdict === 'too-few' ? 'too few' : 'more than needed';
      return `${names}: ${words}, ${formatFigures(bought)} in the budget, ${atLeast ? 'at least ' : ''}${formatFigures(needed)} needed`;
    });
  const sums = (of: typeof counted) =>
    of.map((sum) => `${costText(sum)} (${costText({ ...sum, amount: sum.withReserve })} with reserve)`).join(' and ');
  const top = groups
    .slice(0, 6)
    .map(
      ({ name, amount, currency, share }) =>
        `${printable(name)} ${costText({ amount, currency })}, ${shareText(share)}`,
    );
  return section(
    `What to buy${suffix}`,
    joinLines(
      stock.length > 0 && table,
      stock.some(({ atLeast }) => atLeast) && lines('≥ offcuts are not in it: by area or run, without a layout.'),
      ...short.map(lines),
      typed.length > 0 && lines(`Budget as listed: ${sums(typed)}.`),
      counted.length > 0 && lines(`With the quantities counted here: ${sums(counted)}.`),
      cost === null && typed.length > 1 && lines('Amounts in different currencies are not added.'),
      withoutPrice.length > 0 &&
        lines(
          `Without a price, in no sum: ${withoutPrice.map(printable).join(', ')}. Give the material a price, or let an item of the budget say \`for ${printable(withoutPrice[0] as string)}\`.`,
        ),
      top.length > 0 && lines(`Where the budget goes: ${top.join('; ')}.`),
      ...leavesOut.map((note) => lines(printable(note))),
    ),
    style,
  );
}
