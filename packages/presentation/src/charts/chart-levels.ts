import { type ChartSize, chartFrame, frequencyAxis, hoverSize, linearAxis } from './frame.js';
import { legendIn } from './legend.js';
import { palette } from './palette.js';
import { linePath } from './series-path.js';
import { dataList, round, svgElement } from './svg-element.js';

export interface LevelSeries {
  readonly label: string;
  /** `before` the booth, what arrives `behind` it, the `target`, or something else. */
  readonly role: 'before' | 'behind' | 'target' | 'further';
  readonly levelsDb: readonly (number | null)[];
  /** Written into the picture as `data-mark`, for a page that leads from the line to its place in the text. */
  readonly mark?: number | undefined;
}

export interface LevelsChart {
  readonly title: string;
  readonly description: string;
  /** Band centres of every series. */
  readonly nominalHz: readonly number[];
  readonly series: readonly LevelSeries[];
  /** Name of the vertical axis. */
  readonly label?: string;
  readonly size?: ChartSize;
}

/** How the lines of each role are drawn. */
export const levelLooks = {
  before: { colour: palette.grey, dash: undefined, width: 1.5 },
  behind: { colour: palette.blue, dash: undefined, width: 2 },
  target: { colour: palette.orange, dash: '5 3', width: 1.5 },
  further: { colour: palette.green, dash: '2 2', width: 1.5 },
} as const;

/** Several further lines differ by colour and dash. */
export const furtherLooks = [
  levelLooks.further,
  { colour: palette.purple, dash: '7 3', width: 1.5 },
  { colour: palette.gold, dash: '4 2 1 2', width: 1.5 },
] as const;

/** Sound levels against frequency: outside, inside and what is aimed at. A line breaks where nothing is predicted. */
export function chartLevels(chart: LevelsChart): string {
  const size = chart.size ?? hoverSize;
  const x = frequencyAxis(chart.nominalHz, size);
  const known = chart.series.flatMap((series) => series.levelsDb).filter((level): level is number => level !== null);
  const y = linearAxis(known, size, chart.label ?? 'level, dB');
  const others = chart.series.filter(({ role }) => role === 'further');
  const strokeOf = (series: LevelSeries) =>
    series.role === 'further'
      ? (furtherLooks[others.indexOf(series) % furtherLooks.length] ?? levelLooks.further)
      : levelLooks[series.role];
  const lines = chart.series.map((series) => {
    const stroke = strokeOf(series);
    const at = others.indexOf(series);
    return svgElement('path', {
      class: at > 0 ? `${series.role}-${at + 1}` : series.role,
      d: linePath(chart.nominalHz, series.levelsDb, x, y),
      fill: 'none',
      stroke: stroke.colour,
      'stroke-width': stroke.width,
      'stroke-dasharray': stroke.dash,
      'data-values': dataList(series.levelsDb),
      'data-mark': series.mark,
    });
  });
  const names = chart.series.map((series) => ({
    label: series.label,
    colour: strokeOf(series).colour,
    dash: strokeOf(series).dash,
  }));
  return chartFrame({
    size,
    title: chart.title,
    description: chart.description,
    x,
    y,
    content: lines.join('') + legendIn(size, names, y.label),
    attributes: { 'data-hz': chart.nominalHz.map(round).join(',') },
  });
}
