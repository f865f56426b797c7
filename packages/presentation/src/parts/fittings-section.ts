import type { BoothResult } from '@boothwright/assessment';
import { formatNumber } from '../numbers/format-number.js';
import { printable } from '../text/printable.js';
import { joinLines, section } from '../text/section.js';
import type { TextStyle } from '../text/text-style.js';
import { textTable } from '../text/text-table.js';
import { wrapText } from '../text/wrap-text.js';

/** What is bought by the piece or metre and cut from nothing. */
export function fittingsSection(
  { fittings }: BoothResult['build'],
  suffix: string,
  style: TextStyle,
): string | undefined {
  if (fittings.length === 0) return undefined;
  const table = textTable(
    [{ head: 'need', align: 'right' }, { head: '' }, { head: 'what' }, { head: 'for' }, { head: 'kg', align: 'right' }],
    fittings.map(({ quantity, unit, atLeast, name, owner, massKg }) => [
      `${atLeast ? '≥ ' : ''}${unit === 'm' ? formatNumber(quantity, 1) : formatNumber(quantity)}`,
      unit === 'm' ? 'm' : quantity === 1 ? 'piece' : 'pieces',
      printable(name),
      printable(owner),
      massKg === null ? '–' : formatNumber(massKg, 1),
    ]),
  );
  const note =
    'In the sums only where the budget lists them; an item `for duct`, `for latch` and so on is held against the count. Screws, corner brackets and grips are not counted' +
    (fittings.some(({ what }) => what === 'latch')
      ? '; of latches two to each seam that comes apart, more where the gasket wants more pull.'
      : '.');
  return section(`Fittings${suffix}`, joinLines(table, wrapText(note, style.width, '  ')), style);
}
