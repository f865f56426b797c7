import { stack } from 'd3-shape';
import { type Axis, type ChartSize, chartFrame, hoverSize, linearAxis, margins } from './frame.js';
import { legendIn } from './legend.js';
import { palette, seriesColours } from './palette.js';
import { dataList, svgElement } from './svg-element.js';

export interface SharesChart {
  readonly title: string;
  readonly description: string;
  /** Names under the bars, e.g. octave bands. */
  readonly columns: readonly string[];
  /** Shares 0..1 by column; null where not assessed. */
  readonly parts: readonly {
    readonly label: string;
    readonly shares: readonly (number | null)[];
    /** What no other part names; grey, whatever its place. */
    readonly rest?: true;
    /** Written into the picture as `data-mark`, for a page that leads from the part to its place in the text. */
    readonly mark?: number | undefined;
  }[];
  readonly size?: ChartSize;
}

/** One bar per band, split into what comes by each path. A band that is not assessed has no bar. */
export function chartShares(chart: SharesChart): string {
  const size = chart.size ?? hoverSize;
  const step = (size.width - margins.left - margins.right) / Math.max(1, chart.columns.length);
  const x: Axis = {
    at: (column) => margins.left + (column + 0.5) * step,
    ticks: chart.columns.map((label, value) => ({ label, value })),
    label: 'Hz',
  };
  const y = linearAxis([0, 100], size, 'share, %', 25);
  const keys = chart.parts.map((_, index) => index);
  const layers = stack<number, number>()
    .keys(keys)
    .value((column, part) => 100 * (chart.parts[part]?.shares[column] ?? 0))(chart.columns.map((_, column) => column));
  const bars = layers.map((layer, part) =>
    svgElement('path', {
      class: 'share',
      d: layer
        .map(([low, high], column) => {
          if (high <= low) return '';
          const left = x.at(column) - step * 0.36;
          const top = y.at(high);
          return `M${left.toFixed(1)} ${top.toFixed(1)}h${(step * 0.72).toFixed(1)}v${(y.at(low) - top).toFixed(1)}h${(-step * 0.72).toFixed(1)}z`;
        })
        .join(''),
      fill: colourOf(chart, part),
      'data-values': dataList((chart.parts[part]?.shares ?? []).map((share) => (share === null ? null : 100 * share))),
      'data-mark': chart.parts[part]?.mark,
    }),
  );
  const names = chart.parts.map((part, index) => ({
    label: part.label,
    colour: colourOf(chart, index),
  }));
  return chartFrame({
    size,
    title: chart.title,
    description: chart.description,
    x,
    y,
    content: bars.join('') + legendIn(size, names, y.label),
  });
}

function colourOf({ parts }: SharesChart, index: number): string {
  return parts[index]?.rest ? palette.grey : (seriesColours[index % seriesColours.length] ?? palette.grey);
}
