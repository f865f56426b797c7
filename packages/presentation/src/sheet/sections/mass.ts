import type { TextRange } from '@boothwright/assessment';
import { palette } from '../../charts/palette.js';
import { formatQuantity } from '../../numbers/format-quantity.js';
import { costText, shareText } from '../../parts/stock-words.js';
import { barHtml, figures, html, markButton, pointsHtml, type SheetCell, tableHtml } from '../sheet-html.js';
import type { SheetInput } from '../sheet-input.js';
import { newMarks, type SheetSection } from '../sheet-section.js';

/** What it weighs and costs, part by part, the largest first; the bars are the rows of the table. */
export function massSection({ booth, spec, budget }: SheetInput): SheetSection {
  const { massByPart, massKg, loadedMassKg, floorLoadPa, shopping } = booth.build;
  const marks = newMarks();
  const parts = massByPart.toSorted((a, b) => b.kg - a.kg);
  const heaviest = Math.max(1e-9, ...parts.map(({ kg }) => kg));
  const massRows = parts.map(({ part, kg }): SheetCell[] => [
    named(part, rangeOfPart(part)),
    formatQuantity(kg, 'kg'),
    { html: barHtml(kg / heaviest, palette.blue) },
  ]);
  const dearest = Math.max(1e-9, ...shopping.groups.map(({ share }) => share));
  const costRows = shopping.groups.map(({ name, amount, currency, share }): SheetCell[] => [
    named(name, budget?.items.find((item) => (item.title ?? item.name) === name)?.range),
    costText({ amount, currency }),
    shareText(share),
    { html: barHtml(share / dearest, palette.green) },
  ]);
  const sums = shopping.typed.length > 0 ? shopping.typed : shopping.counted;
  const total = sums.map((sum) => costText(sum)).join(' and ');
  return {
    id: 'mass',
    title: 'Mass and cost',
    summary: [formatQuantity(massKg, 'kg'), total].filter(Boolean).join(' · '),
    html:
      tableHtml({
        caption: 'What the booth weighs, by part',
        columns: [{ head: 'part' }, ...figures('mass'), { head: '' }],
        rows: massRows,
      }) +
      `<p class="note">${html(`${formatQuantity(loadedMassKg, 'kg')} with people and contents, ${formatQuantity(floorLoadPa, 'Pa')} on the floor under it; not a check of that floor.`)}</p>` +
      (costRows.length === 0
        ? `<p class="note">${html('No price is known: a budget block says what is bought.')}</p>`
        : tableHtml({
            caption: 'Where the money goes',
            columns: [{ head: 'for' }, ...figures('cost', 'share'), { head: '' }],
            rows: costRows,
          })) +
      pointsHtml([
        ...sums.map(
          (sum) => `${costText(sum)}, ${costText({ amount: sum.withReserve, currency: sum.currency })} with reserve`,
        ),
        shopping.withoutPrice.length > 0 && `Needed, and no price known: ${shopping.withoutPrice.join(', ')}`,
      ]),
    marks: marks.ranges,
  };

  function named(words: string, range: TextRange | undefined): SheetCell {
    return range === undefined ? words : { html: markButton(marks.of(range), html(words)) };
  }

  /** A part of the mass is called like the face, the opening or the fact that it belongs to. */
  function rangeOfPart(part: string): TextRange | undefined {
    const path = booth.paths.find(
      ({ name, kind }) => part === name || part === `${kind} ${name}` || part === `${name} wall`,
    );
    return path?.range ?? (spec === undefined ? undefined : booth.range);
  }
}
