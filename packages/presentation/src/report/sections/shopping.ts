import type { BoothResult, StockResult } from '@boothwright/assessment';
import { formatFigures, formatNumber } from '../../numbers/format-number.js';
import { costText, shareText } from '../../parts/stock-words.js';
import { ofBooth } from '../../text/section.js';
import { costWords, problemWords } from '../../text/sections/build.js';
import { type Block, blocks, figureColumn, heading, list, type ReportSection, table, text } from '../blocks.js';
import type { ReportInput } from '../report-input.js';

type Build = BoothResult['build'];

const units = { sheet: 'sheets', length: 'lengths', m2: 'm²', m: 'm' } as const;
const singular = { sheet: 'sheet', length: 'length', m2: 'm²', m: 'm' } as const;

/** What to buy, what it costs, what to seal. */
export function shoppingSection({ result }: ReportInput): ReportSection | undefined {
  const booths = Object.entries(result.booths);
  if (booths.length === 0) return undefined;
  return {
    id: 'shopping',
    title: 'Shopping list',
    lead: 'What the parts need, with offcuts where they are laid out, beside what the budget buys. Prices are those of the text.',
    blocks: blocks(
      ...booths.flatMap(([name, { build }]) => {
        const suffix = ofBooth(name, booths.length);
        return [
          booths.length > 1 && heading(name),
          stockTable(build, suffix),
          build.shopping.stock.some(({ atLeast }) => atLeast) &&
            text('≥ offcuts are not in it: by area or run, without a layout.'),
          ...moneyBlocks(build, suffix),
          fittingsTable(build, suffix),
          build.fittings.length > 0 &&
            text(
              'Fittings are in the sums only where the budget lists them. Screws, corner brackets and grips are not counted.',
            ),
          sealsTable(build, suffix),
          list(build.sealing.missing),
        ];
      }),
    ),
  };
}

function stockTable({ shopping }: Build, suffix: string): Block | undefined {
  return table(
    `Sheets, lengths and soft goods${suffix}`,
    [
      { head: 'what' },
      figureColumn('need'),
      figureColumn('waste'),
      figureColumn('kg'),
      figureColumn('price'),
      figureColumn('sum'),
      figureColumn('in the budget'),
    ],
    shopping.stock.map((row) => [
      row.title && row.title !== row.name ? `${row.name}, ${row.title}` : row.name,
      needText(row),
      row.wasteShare === null ? '' : shareText(row.wasteShare),
      row.massKg === null ? '–' : formatNumber(row.massKg),
      row.price === null ? '–' : `${costText(row.price)} per ${row.price.per === 'm2' ? 'm²' : row.price.per}`,
      row.cost === null ? '–' : costText(row.cost),
      row.bought === null ? '' : formatFigures(row.bought),
    ]),
  );
}

/** `≥ 10.4 m²`, `7 sheets`. */
function needText({ atLeast, unit, quantity }: StockResult): string {
  const figure = unit === 'sheet' || unit === 'length' ? formatNumber(quantity) : formatNumber(quantity, 1);
  return `${atLeast ? '≥ ' : ''}${figure} ${quantity === 1 ? singular[unit] : units[unit]}`;
}

function moneyBlocks(build: Build, suffix: string): Block[] {
  const { shopping } = build;
  return blocks(
    list([
      costWords(build),
      problemWords(build),
      shopping.withoutPrice.length > 0 && `Without a price, in no sum: ${shopping.withoutPrice.join(', ')}`,
      ...shopping.leavesOut,
    ]),
    table(
      `Where the budget goes${suffix}`,
      [{ head: 'group' }, figureColumn('amount'), figureColumn('share')],
      shopping.groups.map(({ name, amount, currency, share }) => [
        name,
        costText({ amount, currency }),
        shareText(share),
      ]),
    ),
  );
}

function fittingsTable({ fittings }: Build, suffix: string): Block | undefined {
  return table(
    `Fittings${suffix}, bought by the piece or metre`,
    [{ head: 'what' }, figureColumn('need'), { head: 'for' }, figureColumn('kg each')],
    fittings.map(({ name, quantity, unit, atLeast, owner, massKg }) => [
      name,
      `${atLeast ? '≥ ' : ''}${unit === 'm' ? `${formatNumber(quantity, 1)} m` : formatNumber(quantity)}`,
      owner,
      massKg === null ? '–' : formatNumber(massKg, 1),
    ]),
  );
}

function sealsTable({ sealing }: Build, suffix: string): Block | undefined {
  return table(
    `Seams to seal${suffix}`,
    [{ head: 'place' }, { head: 'seal' }, figureColumn('metres')],
    [
      ...sealing.seams.map(({ place, kind, metres }) => [place, kind, formatNumber(metres, 2)]),
      ...sealing.totals.map(({ kind, metres }) => ['in all', kind, formatNumber(metres, 1)]),
    ],
  );
}
