import { type ChartSize, chartFrame, frequencyAxis, hoverSize, linearAxis } from './frame.js';
import { legendIn } from './legend.js';
import { palette } from './palette.js';
import { bandPath, linePath } from './series-path.js';
import { dataList, round, svgElement } from './svg-element.js';

export interface TransmissionLossChart {
  readonly title: string;
  /** Read aloud in place of the picture: say the single-number result here. */
  readonly description: string;
  readonly nominalHz: readonly number[];
  readonly lossDb: readonly number[];
  /** Half-width of the stated range, per band. */
  readonly rangeDb?: readonly number[];
  /** The rating contour with its name, e.g. `STC 41`; null where it is not defined. */
  readonly contour?: { readonly label: string; readonly valuesDb: readonly (number | null)[] };
  /** A second curve to compare with, e.g. the base of a variant. */
  readonly other?: { readonly label: string; readonly lossDb: readonly number[] };
  readonly size?: ChartSize;
}

/** Transmission loss against frequency, with its range and the contour of the rating. */
export function chartTransmissionLoss(chart: TransmissionLossChart): string {
  const size = chart.size ?? hoverSize;
  const range = chart.rangeDb ?? [];
  const low = chart.lossDb.map((loss, band) => loss - (range[band] ?? 0));
  const high = chart.lossDb.map((loss, band) => loss + (range[band] ?? 0));
  const contour = chart.contour?.valuesDb ?? [];
  const x = frequencyAxis(chart.nominalHz, size);
  const known = contour.filter((value): value is number => value !== null);
  const y = linearAxis([...low, ...high, ...known, ...(chart.other?.lossDb ?? [])], size, 'transmission loss, dB');
  const content = [
    chart.rangeDb &&
      svgElement('path', {
        class: 'range',
        d: bandPath(chart.nominalHz, low, high, x, y),
        fill: palette.blue,
        'fill-opacity': '0.2',
        'data-values': dataList(chart.rangeDb),
      }),
    chart.contour &&
      svgElement('path', {
        class: 'contour',
        d: linePath(chart.nominalHz, contour, x, y),
        fill: 'none',
        stroke: palette.orange,
        'stroke-width': 1.5,
        'stroke-dasharray': '5 3',
        'data-values': dataList(contour),
      }),
    chart.other &&
      svgElement('path', {
        class: 'other',
        d: linePath(chart.nominalHz, chart.other.lossDb, x, y),
        fill: 'none',
        stroke: palette.green,
        'stroke-width': 1.5,
        'stroke-dasharray': '2 2',
        'data-values': dataList(chart.other.lossDb),
      }),
    svgElement('path', {
      class: 'loss',
      d: linePath(chart.nominalHz, chart.lossDb, x, y),
      fill: 'none',
      stroke: palette.blue,
      'stroke-width': 2,
      'data-values': dataList(chart.lossDb),
    }),
    legendIn(size, [
      { label: chart.rangeDb ? 'predicted, with range' : 'predicted', colour: palette.blue },
      ...(chart.contour ? [{ label: chart.contour.label, colour: palette.orange, dash: '5 3' }] : []),
      ...(chart.other ? [{ label: chart.other.label, colour: palette.green, dash: '2 2' }] : []),
    ]),
  ];
  return chartFrame({
    size,
    title: chart.title,
    description: chart.description,
    x,
    y,
    content: content.filter(Boolean).join(''),
    attributes: { 'data-hz': chart.nominalHz.map(round).join(',') },
  });
}
