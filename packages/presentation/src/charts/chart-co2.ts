import type { AirCurve, AirResult } from '@boothwright/assessment';
import { ticks } from 'd3-array';
import { scaleLinear } from 'd3-scale';
import { type Axis, type ChartSize, chartFrame, hoverSize, linearAxis, margins } from './frame.js';
import { legend } from './legend.js';
import { palette } from './palette.js';
import { linePath } from './series-path.js';
import { dataList, svgElement } from './svg-element.js';

export interface Co2Chart {
  readonly title: string;
  readonly description: string;
  readonly air: AirResult;
  /** The level that a requirement allows, in ppm. */
  readonly limitPpm?: number;
  readonly size?: ChartSize;
}

const mostPoints = 21;

/** Evenly thinned, first and last point kept, so that a long session stays a small picture. */
function thinned(curve: AirCurve): { readonly minutes: readonly number[]; readonly ppm: readonly number[] } {
  const count = curve.minutes.length;
  if (count <= mostPoints) return curve;
  const picked = Array.from({ length: mostPoints }, (_, index) => Math.round((index * (count - 1)) / (mostPoints - 1)));
  return {
    minutes: picked.map((index) => curve.minutes[index] ?? 0),
    ppm: picked.map((index) => curve.ppm[index] ?? 0),
  };
}

const looks: Readonly<Record<AirCurve['setting'], { readonly colour: string; readonly dash: string | undefined }>> = {
  high: { colour: palette.blue, dash: undefined },
  low: { colour: palette.green, dash: '2 2' },
  off: { colour: palette.purple, dash: '7 3' },
};

/** CO2 against time, fan off, low and high. */
export function chartCo2(chart: Co2Chart): string {
  const size = chart.size ?? hoverSize;
  const curves = [chart.air.fanHigh, chart.air.fanLow, chart.air.fanOff].filter(
    (curve): curve is AirCurve => curve !== null,
  );
  const end = Math.max(1, ...curves.flatMap((curve) => curve.minutes));
  const scale = scaleLinear()
    .domain([0, end])
    .range([margins.left, size.width - margins.right]);
  const x: Axis = {
    at: (minutes) => scale(minutes),
    ticks: ticks(0, end, 6).map((value) => ({ value, label: String(value) })),
    label: 'min',
  };
  const highest = Math.max(1000, chart.limitPpm ?? 0, ...curves.flatMap((curve) => curve.ppm));
  const y = linearAxis([0, highest], size, 'CO₂, ppm', highest > 4000 ? 1000 : 500);
  const lines = curves.map((curve) => {
    const { minutes, ppm } = thinned(curve);
    return svgElement('path', {
      class: `fan-${curve.setting}`,
      d: linePath(minutes, ppm, x, y),
      fill: 'none',
      stroke: looks[curve.setting].colour,
      'stroke-width': 2,
      'stroke-dasharray': looks[curve.setting].dash,
      'data-minutes': dataList(minutes),
      'data-values': dataList(ppm.map(Math.round)),
    });
  });
  const limit =
    chart.limitPpm === undefined
      ? ''
      : svgElement('path', {
          class: 'limit',
          d: `M${margins.left} ${y.at(chart.limitPpm).toFixed(1)}H${size.width - margins.right}`,
          stroke: palette.orange,
          'stroke-dasharray': '5 3',
          'data-values': chart.limitPpm,
        });
  const names = [
    ...curves.map((curve) => ({
      label: `fan ${curve.setting}`,
      ...looks[curve.setting],
    })),
    ...(chart.limitPpm === undefined
      ? []
      : [{ label: `limit ${chart.limitPpm}`, colour: palette.orange, dash: '5 3' }]),
  ];
  return chartFrame({
    size,
    title: chart.title,
    description: chart.description,
    x,
    y,
    content: limit + lines.join('') + legend(names, size.width),
  });
}
