import { type ChartSize, chartFrame, frequencyAxis, hoverSize, linearAxis } from './frame.js';
import { legend } from './legend.js';
import { palette } from './palette.js';
import { linePath } from './series-path.js';
import { dataList, round, svgElement } from './svg-element.js';

export interface LevelSeries {
  readonly label: string;
  /** `before` the booth, what arrives `behind` it, the `target`, or something else. */
  readonly role: 'before' | 'behind' | 'target' | 'further';
  readonly levelsDb: readonly (number | null)[];
}

export interface LevelsChart {
  readonly title: string;
  readonly description: string;
  /** Band centres of every series. */
  readonly nominalHz: readonly number[];
  readonly series: readonly LevelSeries[];
  readonly size?: ChartSize;
}

const strokes = {
  before: { colour: palette.grey, dash: undefined, width: 1.5 },
  behind: { colour: palette.blue, dash: undefined, width: 2 },
  target: { colour: palette.orange, dash: '5 3', width: 1.5 },
  further: { colour: palette.green, dash: '2 2', width: 1.5 },
} as const;

/** Sound levels against frequency: outside, inside and what is aimed at. A line breaks where nothing is predicted. */
export function chartLevels(chart: LevelsChart): string {
  const size = chart.size ?? hoverSize;
  const x = frequencyAxis(chart.nominalHz, size);
  const known = chart.series.flatMap((series) => series.levelsDb).filter((level): level is number => level !== null);
  const y = linearAxis(known, size, 'level, dB');
  const lines = chart.series.map((series) => {
    const stroke = strokes[series.role];
    return svgElement('path', {
      class: series.role,
      d: linePath(chart.nominalHz, series.levelsDb, x, y),
      fill: 'none',
      stroke: stroke.colour,
      'stroke-width': stroke.width,
      'stroke-dasharray': stroke.dash,
      'data-values': dataList(series.levelsDb),
    });
  });
  const names = chart.series.map((series) => ({
    label: series.label,
    colour: strokes[series.role].colour,
    dash: strokes[series.role].dash,
  }));
  return chartFrame({
    size,
    title: chart.title,
    description: chart.description,
    x,
    y,
    content: lines.join('') + legend(names, size.width),
    attributes: { 'data-hz': chart.nominalHz.map(round).join(',') },
  });
}
