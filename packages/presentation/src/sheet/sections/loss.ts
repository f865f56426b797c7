import { chartTransmissionLoss } from '../../charts/chart-transmission-loss.js';
import { palette } from '../../charts/palette.js';
import { bandName } from '../../numbers/format-frequency.js';
import { formatNumber } from '../../numbers/format-number.js';
import { figureHtml, figures, html, type KeyEntry } from '../sheet-html.js';
import type { SheetInput } from '../sheet-input.js';
import { newMarks, type SheetSection } from '../sheet-section.js';

/** Transmission loss of what the cursor is on, with its range and the contour of its rating. */
export function lossSection({ results, element, size }: SheetInput): SheetSection {
  const { nominalHz } = results.grid;
  const { name, note, range, lossDb, spread, rating } = element;
  const marks = newMarks();
  const mark = marks.of(range);
  // The contour covers 125 Hz to 4 kHz; the bands below and above have none.
  const first = nominalHz.indexOf(125);
  const contour = nominalHz.map((_, band) => rating.contour[band - first] ?? null);
  const stc = withEnds(rating.stc, rating.stcRange);
  const rw = withEnds(rating.rw, rating.rwRange);
  const svg = chartTransmissionLoss({
    title: `Transmission loss of ${name}`,
    description: `${name}: STC ${stc}, Rw ${rw}`,
    nominalHz,
    lossDb,
    ...(spread ? { rangeDb: spread.rangeDb } : {}),
    contour: { label: `STC ${rating.stc}`, valuesDb: contour },
    size,
  });
  const key: KeyEntry[] = [
    { label: name, colour: palette.blue, mark },
    { label: `contour of STC ${rating.stc}`, colour: palette.orange, dash: '5 3' },
  ];
  return {
    id: 'loss',
    title: `Transmission loss: ${name}`,
    summary: `STC ${stc} · Rw ${rw}`,
    html: `${note === '' ? '' : `<p class="note">${html(note)}</p>`}${figureHtml(svg, key, {
      caption: `Transmission loss of ${name} by third octave, dB`,
      columns: figures('Hz', 'loss', ...(spread ? ['from', 'to'] : []), `STC ${rating.stc}`),
      rows: nominalHz.map((hz, band) => [
        bandName(hz),
        formatNumber(lossDb[band] ?? Number.NaN, 1),
        ...(spread
          ? [formatNumber(spread.lowDb[band] ?? Number.NaN, 1), formatNumber(spread.highDb[band] ?? Number.NaN, 1)]
          : []),
        contour[band] === null || contour[band] === undefined ? '' : formatNumber(contour[band]),
      ]),
    })}`,
    marks: marks.ranges,
  };
}

function withEnds(value: number, ends: readonly [number, number] | undefined): string {
  return ends === undefined ? String(value) : `${value} (${ends[0]} to ${ends[1]})`;
}
