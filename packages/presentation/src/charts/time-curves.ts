import type { FanSettingOfAir } from '@boothwright/assessment';
import { ticks } from 'd3-array';
import { scaleLinear } from 'd3-scale';
import { type Axis, type ChartSize, chartFrame, linearAxis, margins } from './frame.js';
import { legendIn } from './legend.js';
import { palette } from './palette.js';
import { linePath } from './series-path.js';
import { dataList, svgElement } from './svg-element.js';

export interface TimeCurve {
  readonly setting: FanSettingOfAir;
  readonly minutes: readonly number[];
  readonly values: readonly number[];
}

export interface TimeCurvesChart {
  readonly title: string;
  readonly description: string;
  readonly size: ChartSize;
  readonly curves: readonly TimeCurve[];
  readonly label: string;
  readonly step: number;
  /** The axis goes up to here at least. */
  readonly atLeast: number;
  /** A curve that goes higher leaves the picture at the top. */
  readonly atMost?: number;
  readonly limit?: number;
  /** Figures of `data-values`. */
  readonly rounded: (value: number) => number;
}

const mostPoints = 21;

/** Evenly thinned, first and last point kept, so that a long session stays a small picture. */
function thinned(curve: TimeCurve): Pick<TimeCurve, 'minutes' | 'values'> {
  const count = curve.minutes.length;
  if (count <= mostPoints) return curve;
  const picked = Array.from({ length: mostPoints }, (_, index) => Math.round((index * (count - 1)) / (mostPoints - 1)));
  return {
    minutes: picked.map((index) => curve.minutes[index] ?? 0),
    values: picked.map((index) => curve.values[index] ?? 0),
  };
}

/** The part of a rising curve below `highest`, ending on it. */
function upTo(
  highest: number,
  minutes: readonly number[],
  values: readonly number[],
): [readonly number[], readonly number[]] {
  const over = values.findIndex((value) => value > highest);
  if (over <= 0) return [minutes, values];
  const [before = 0, after = 0] = [values[over - 1], values[over]];
  const [from = 0, to = 0] = [minutes[over - 1], minutes[over]];
  const crossing = from + ((highest - before) / (after - before)) * (to - from);
  return [
    [...minutes.slice(0, over), crossing],
    [...values.slice(0, over), highest],
  ];
}

/** How the curve of each setting is drawn. */
export const settingLooks: Readonly<
  Record<FanSettingOfAir, { readonly colour: string; readonly dash: string | undefined }>
> = {
  high: { colour: palette.blue, dash: undefined },
  low: { colour: palette.green, dash: '2 2' },
  off: { colour: palette.purple, dash: '7 3' },
};

/** Something that grows over the session, a curve for every setting of the fans, and the most that is allowed. */
export function timeCurves(chart: TimeCurvesChart): string {
  const { size, curves, limit } = chart;
  const end = Math.max(1, ...curves.flatMap((curve) => curve.minutes));
  const scale = scaleLinear()
    .domain([0, end])
    .range([margins.left, size.width - margins.right]);
  const x: Axis = {
    at: (minutes) => scale(minutes),
    ticks: ticks(0, end, 6).map((value) => ({ value, label: String(value) })),
    label: 'min',
  };
  const top = Math.max(chart.atLeast, limit ?? 0, ...curves.flatMap((curve) => curve.values));
  const highest = Math.min(top, chart.atMost ?? top);
  const lowest = Math.min(0, ...curves.flatMap((curve) => curve.values));
  const y = linearAxis([lowest, highest], size, chart.label, chart.step);
  const lines = curves.map((curve) => {
    const { minutes, values } = thinned(curve);
    return svgElement('path', {
      class: `fan-${curve.setting}`,
      d: linePath(...upTo(highest, minutes, values), x, y),
      fill: 'none',
      stroke: settingLooks[curve.setting].colour,
      'stroke-width': 2,
      'stroke-dasharray': settingLooks[curve.setting].dash,
      'data-minutes': dataList(minutes),
      'data-values': dataList(values.map(chart.rounded)),
    });
  });
  const limitLine =
    limit === undefined
      ? ''
      : svgElement('path', {
          class: 'limit',
          d: `M${margins.left} ${y.at(limit).toFixed(1)}H${size.width - margins.right}`,
          stroke: palette.orange,
          'stroke-dasharray': '5 3',
          'data-values': limit,
        });
  const names = [
    ...curves.map((curve) => ({ label: `fan ${curve.setting}`, ...settingLooks[curve.setting] })),
    ...(limit === undefined ? [] : [{ label: `limit ${limit}`, colour: palette.orange, dash: '5 3' }]),
  ];
  return chartFrame({
    size,
    title: chart.title,
    description: chart.description,
    x,
    y,
    content: limitLine + lines.join('') + legendIn(size, names, y.label),
  });
}
