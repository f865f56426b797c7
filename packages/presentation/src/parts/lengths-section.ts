import type { BoothResult } from '@boothwright/assessment';
import { printable } from '../text/printable.js';
import { joinLines, section } from '../text/section.js';
import type { TextStyle } from '../text/text-style.js';
import { wrapText } from '../text/wrap-text.js';
import { mm } from './mm.js';
import { shareText } from './stock-words.js';

/** How to cut every length; equal cuts stand together. */
export function lengthsSection(
  { lengthLayouts }: BoothResult['build'],
  suffix: string,
  style: TextStyle,
): string | undefined {
  if (lengthLayouts.length === 0) return undefined;
  const lines = (text: string) => wrapText(text, style.width, '  ', '    ');
  const texts = lengthLayouts.map((layout) => {
    const { stock, stockLengthM, assumedLength, patterns, lengths, leastLengths, wasteShare, tooLong, why } = layout;
    if (why !== null) return lines(`${printable(stock)}: not laid out, ${why}.`);
    const size = `${mm(stockLengthM)} mm${assumedLength ? ', a length assumed because the material gives none' : ''}`;
    const bound = lengths > leastLengths ? `; no cutting needs fewer than ${leastLengths}` : '';
    return joinLines(
      lines(
        `${printable(stock)}: ${lengths} ${lengths === 1 ? 'length' : 'lengths'} of ${size}, ${shareText(wasteShare)} waste${bound}`,
      ),
      ...patterns.map(({ count, cutsM, offcutM }) =>
        wrapText(`${count} × ${cutsM.map(mm).join(' + ')}, left over ${mm(offcutM)}`, style.width, '    ', '      '),
      ),
      ...tooLong.map(({ mark, owner, lengthM }) =>
        lines(`${mark}, ${printable(owner)}, ${mm(lengthM)} mm is longer than any length: buy longer ones or join it.`),
      ),
    );
  });
  return section(`Lengths${suffix}`, texts.join('\n'), style);
}
