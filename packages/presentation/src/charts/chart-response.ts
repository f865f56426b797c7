import { type ChartSize, chartFrame, frequencyAxis, hoverSize, linearAxis, margins } from './frame.js';
import { legendIn } from './legend.js';
import { palette } from './palette.js';
import { linePath } from './series-path.js';
import { dataList, svgElement } from './svg-element.js';

export interface ResponseChart {
  readonly title: string;
  readonly description: string;
  readonly hz: readonly number[];
  /** Re the direct sound alone. */
  readonly levelDb: readonly number[];
  readonly size?: ChartSize;
}

/** What the booth adds to and takes from the voice on its way to the microphone; 0 dB is the direct sound alone. */
export function chartResponse(chart: ResponseChart): string {
  const size = chart.size ?? hoverSize;
  const x = frequencyAxis(chart.hz, size);
  const y = linearAxis([5, -5, ...chart.levelDb], size, 're the voice alone, dB', 5);
  const content = [
    svgElement('path', {
      class: 'direct',
      d: `M${margins.left} ${y.at(0).toFixed(1)}H${size.width - margins.right}`,
      stroke: palette.grey,
      'stroke-width': 1.5,
      'stroke-dasharray': '7 3',
    }),
    svgElement('path', {
      class: 'response',
      d: linePath(chart.hz, chart.levelDb, x, y),
      fill: 'none',
      stroke: palette.blue,
      'stroke-width': 2,
      'data-values': dataList(chart.levelDb),
    }),
  ];
  const names = [
    { label: 'at the mic', colour: palette.blue },
    { label: 'the voice alone', colour: palette.grey, dash: '7 3' },
  ];
  return chartFrame({
    size,
    title: chart.title,
    description: chart.description,
    x,
    y,
    content: content.join('') + legendIn(size, names, y.label),
    attributes: { 'data-hz': dataList(chart.hz) },
  });
}
