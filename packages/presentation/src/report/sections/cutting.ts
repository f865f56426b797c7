import type { BoothResult, LengthLayout, SheetLayout } from '@boothwright/assessment';
import { formatNumber } from '../../numbers/format-number.js';
import { mm } from '../../parts/mm.js';
import { shareText } from '../../parts/stock-words.js';
import { ofBooth } from '../../text/section.js';
import { type Block, blocks, figureColumn, heading, list, type ReportSection, table, text } from '../blocks.js';
import type { ReportInput } from '../report-input.js';
import { cuttingDrawings } from './drawings.js';

type Build = BoothResult['build'];

/** Every piece, and how to cut it out of sheets and lengths. */
export function cuttingSection(input: ReportInput): ReportSection | undefined {
  const { result } = input;
  const booths = Object.entries(result.booths);
  if (booths.length === 0) return undefined;
  return {
    id: 'cutting',
    title: 'Cutting list',
    lead: 'Every piece with its mark, and where it lies on its sheet or length. Sizes in mm.',
    blocks: blocks(
      ...booths.flatMap(([name, { build }]) => {
        const suffix = ofBooth(name, booths.length);
        const { sheets, lengths } = cuttingDrawings(input, name);
        return [
          booths.length > 1 && heading(name),
          build.panelsWhy !== null &&
            text(
              `No panels: ${build.panelsWhy}. Write \`panels { width 600 mm }\` into the booth to get panels, a cut list and layouts.`,
            ),
          cutTable(build, suffix),
          build.parts.length > 0 && text('Linings are cut to fit in place and are in the shopping list.'),
          ...build.sheetLayouts.flatMap((layout) => sheetBlocks(layout, suffix)),
          ...sheets,
          ...lengthBlocks(build.lengthLayouts, suffix),
          ...lengths,
        ];
      }),
    ),
  };
}

function cutTable({ parts }: Build, suffix: string): Block | undefined {
  return table(
    `Cut list${suffix}`,
    [
      { head: 'mark' },
      figureColumn('count'),
      figureColumn('size, mm'),
      { head: 'of' },
      { head: 'as' },
      { head: 'for' },
      figureColumn('kg'),
    ],
    parts.map((part) => [
      part.mark,
      String(part.count),
      part.form === 'stick' ? mm(part.lengthM) : `${mm(part.widthM)} × ${mm(part.lengthM)}`,
      part.stock,
      part.cutOutM2 > 0 ? `${part.use}, cut out` : part.use,
      part.owner,
      part.massKg === null ? '–' : formatNumber(part.massKg * part.count, 1),
    ]),
  );
}

function sheetBlocks(layout: SheetLayout, suffix: string): Block[] {
  const { stock, sheets, leastSheets, wasteShare, tooBig, assumedSize, why, kerfM } = layout;
  const size = `${mm(layout.sheetWidthM)} × ${mm(layout.sheetHeightM)} mm${assumedSize ? ', a size assumed because the material gives none' : ''}`;
  if (why !== null) return blocks(heading(`${stock}${suffix}`), text(`Not laid out: ${why}.`));
  const bound = sheets.length > leastSheets ? `; no layout needs fewer than ${leastSheets}` : '';
  return blocks(
    heading(`${stock}${suffix}: ${sheets.length} ${sheets.length === 1 ? 'sheet' : 'sheets'}`),
    text(`Sheets of ${size}, ${shareText(wasteShare)} waste, saw ${mm(kerfM)} mm${bound}.`),
    table(
      `Pieces on each sheet of ${stock}${suffix}, placed from its lower left corner`,
      [{ head: 'sheet' }, { head: 'pieces, width × height at x, y' }],
      sheets.map((sheet, index) => [
        `${index + 1}${sheet.edgeToEdge ? '' : ' (needs a cut that stops short of the edge)'}`,
        sheet.parts
          .map(
            ({ mark, xM, yM, widthM, heightM, turned }) =>
              `${mark} ${mm(widthM)} × ${mm(heightM)} at ${mm(xM)}, ${mm(yM)}${turned ? ', turned' : ''}`,
          )
          .join('; '),
      ]),
    ),
    list(
      tooBig.map(
        ({ mark, owner, widthM, lengthM }) =>
          `${mark}, ${owner}, ${mm(widthM)} × ${mm(lengthM)} mm is bigger than any sheet: cut the face into smaller panels, split it, or buy bigger sheets.`,
      ),
    ),
  );
}

function lengthBlocks(layouts: readonly LengthLayout[], suffix: string): Block[] {
  if (layouts.length === 0) return [];
  return blocks(
    heading(`Lengths${suffix}`),
    ...layouts.flatMap((layout) => {
      const { stock, why, lengths, stockLengthM, assumedLength, wasteShare, leastLengths, patterns, tooLong } = layout;
      if (why !== null) return [text(`${stock}: not laid out, ${why}.`)];
      const bound = lengths > leastLengths ? `; no cutting needs fewer than ${leastLengths}` : '';
      return [
        table(
          `${stock}: ${lengths} of ${mm(stockLengthM)} mm${assumedLength ? ', a length assumed because the material gives none' : ''}, ${shareText(wasteShare)} waste${bound}`,
          [figureColumn('times'), { head: 'cuts, mm' }, figureColumn('left over, mm')],
          patterns.map(({ count, cutsM, offcutM }) => [String(count), cutsM.map(mm).join(' + '), mm(offcutM)]),
        ),
        list(
          tooLong.map(
            ({ mark, owner, lengthM }) =>
              `${mark}, ${owner}, ${mm(lengthM)} mm is longer than any length: buy longer ones or join it.`,
          ),
        ),
      ];
    }),
  );
}
