import type { BoothResult, SheetLayout } from '@boothwright/assessment';
import { printable } from '../text/printable.js';
import { joinLines, section } from '../text/section.js';
import type { TextStyle } from '../text/text-style.js';
import { wrapText } from '../text/wrap-text.js';
import { mm } from './mm.js';
import { shareText } from './stock-words.js';

/** Every sheet with the pieces on it, by place from its lower left corner. */
export function sheetsSection(
  { sheetLayouts }: BoothResult['build'],
  suffix: string,
  style: TextStyle,
): string | undefined {
  if (sheetLayouts.length === 0) return undefined;
  return section(`Sheets${suffix}`, sheetLayouts.map((layout) => layoutText(layout, style)).join('\n'), style);
}

function layoutText(layout: SheetLayout, style: TextStyle): string {
  const { stock, sheets, leastSheets, wasteShare, tooBig, assumedSize, why, kerfM } = layout;
  const size = `${mm(layout.sheetWidthM)} × ${mm(layout.sheetHeightM)} mm${assumedSize ? ', a size assumed because the material gives none' : ''}`;
  const lines = (text: string) => wrapText(text, style.width, '  ', '    ');
  if (why !== null) return lines(`${printable(stock)}: not laid out, ${why}.`);
  const bound = sheets.length > leastSheets ? `; no layout needs fewer than ${leastSheets}` : '';
  return joinLines(
    lines(
      `${printable(stock)}: ${sheets.length} ${sheets.length === 1 ? 'sheet' : 'sheets'} of ${size}, ${shareText(wasteShare)} waste, saw ${mm(kerfM)} mm${bound}`,
    ),
    ...sheets.map((sheet, index) => {
      const parts = sheet.parts.map(
        ({ mark, xM, yM, widthM, heightM, turned }) =>
          `${mark} ${mm(widthM)}×${mm(heightM)} at ${mm(xM)},${mm(yM)}${turned ? ' turned' : ''}`,
      );
      const way = sheet.edgeToEdge ? '' : ' (needs a cut that stops short of the edge)';
      return wrapText(`sheet ${index + 1}${way}: ${parts.join('; ')}`, style.width, '    ', '      ');
    }),
    ...tooBig.map(({ mark, owner, widthM, lengthM }) =>
      lines(
        `${mark}, ${printable(owner)}, ${mm(widthM)} × ${mm(lengthM)} mm is bigger than any sheet: cut the face into smaller panels, split it, or buy bigger sheets.`,
      ),
    ),
  );
}
