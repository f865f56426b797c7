import type { ResultDocument } from '@boothwright/assessment';
import { bandName } from '../../numbers/format-frequency.js';
import { formatFigures, formatNumber } from '../../numbers/format-number.js';
import { octaveCentres, octaveLoss } from '../../numbers/octaves.js';
import { ratingRange } from '../../numbers/rating-range.js';
import { printable } from '../printable.js';
import { joinLines, section } from '../section.js';
import type { TextStyle } from '../text-style.js';
import { type Column, textTable } from '../text-table.js';
import { wrapText } from '../wrap-text.js';

/** Ratings and transmission loss of every assembly. */
export function assembliesSection(result: ResultDocument, style: TextStyle): string | undefined {
  const entries = Object.entries(result.assemblies);
  if (entries.length === 0) return undefined;
  const right = (head: string): Column => ({ head, align: 'right' });
  const ratings = textTable(
    [
      { head: '' },
      right('STC'),
      right('range'),
      right('Rw'),
      right('range'),
      right('C'),
      right('Ctr'),
      right('kg/m²'),
      right('mm'),
      right('resonances, Hz'),
    ],
    entries.map(([name, assembly]) => {
      const range = ratingRange(assembly);
      return [
        printable(name),
        String(assembly.ratings.stc),
        range.stc.join(' to '),
        formatNumber(assembly.ratings.rw),
        range.rw.map((value) => formatNumber(value)).join(' to '),
        formatNumber(assembly.ratings.c),
        formatNumber(assembly.ratings.ctr),
        formatFigures(assembly.surfaceMassKgPerM2),
        formatFigures(assembly.thicknessM * 1000),
        assembly.resonancesHz.map((hz) => formatNumber(hz)).join(', ') || '–',
      ];
    }),
  );
  const losses = textTable(
    [{ head: '' }, ...octaveCentres.map((hz) => right(bandName(hz)))],
    entries.flatMap(([name, assembly]) => {
      const low = octaveLoss(assembly.transmissionLossLowDb);
      const high = octaveLoss(assembly.transmissionLossHighDb);
      return [
        [printable(name), ...octaveLoss(assembly.transmissionLossDb).map((loss) => formatNumber(loss))],
        ['  from', ...low.map((loss) => formatNumber(loss))],
        ['  to', ...high.map((loss) => formatNumber(loss))],
      ];
    }),
  );
  return section(
    'Assemblies, layers from outside to inside',
    joinLines(ratings, wrapText('Transmission loss by octave with its range, dB:', style.width, '  ', '    '), losses),
    style,
  );
}
