import { ticks } from 'd3-array';
import { scaleLinear, scaleLog } from 'd3-scale';
import { bandName } from '../numbers/format-frequency.js';
import { palette } from './palette.js';
import { escapeXml, round, svgElement, svgText } from './svg-element.js';

export interface ChartSize {
  readonly width: number;
  readonly height: number;
  /** False where the names of the lines stand beside the picture. */
  readonly names?: false;
}

/** As high as an editor shows without scrolling below two lines of text, so that nothing is scaled down and letters stay readable. */
export const hoverSize: ChartSize = { width: 460, height: 188 };
export const margins = { top: 22, right: 10, bottom: 32, left: 36 } as const;

export interface Axis {
  readonly at: (value: number) => number;
  readonly ticks: readonly { readonly value: number; readonly label: string }[];
  readonly label: string;
}

/** Whole picture: title and description for readers who do not see it, grid, axes, then `content`. */
export function chartFrame(options: {
  readonly size: ChartSize;
  readonly title: string;
  readonly description: string;
  readonly x: Axis;
  readonly y: Axis;
  readonly content: string;
  readonly attributes?: Readonly<Record<string, string>>;
}): string {
  const { size, title, description, x, y, content } = options;
  const bottom = size.height - margins.bottom;
  const right = size.width - margins.right;
  const grid = [
    ...x.ticks.map((tick) => `M${round(x.at(tick.value))} ${margins.top}V${bottom}`),
    ...y.ticks.map((tick) => `M${margins.left} ${round(y.at(tick.value))}H${right}`),
  ].join('');
  const labels = [
    ...x.ticks.map((tick) => svgText(tick.label, { x: x.at(tick.value), y: bottom + 13, 'text-anchor': 'middle' })),
    ...y.ticks.map((tick) =>
      svgText(tick.label, { x: margins.left - 4, y: y.at(tick.value) + 4, 'text-anchor': 'end' }),
    ),
    svgText(x.label, { x: right, y: size.height - 4, 'text-anchor': 'end' }),
    svgText(y.label, { x: 2, y: 11 }),
  ].join('');
  return svgElement(
    'svg',
    {
      xmlns: 'http://www.w3.org/2000/svg',
      role: 'img',
      width: size.width,
      height: size.height,
      viewBox: `0 0 ${size.width} ${size.height}`,
      ...options.attributes,
    },
    `<title>${escapeXml(title)}</title><desc>${escapeXml(description)}</desc>` +
      svgElement('path', { class: 'grid', d: grid, stroke: palette.grey, 'stroke-opacity': '0.3', fill: 'none' }) +
      svgElement('g', { fill: palette.grey, 'font-family': 'sans-serif', 'font-size': 11 }, labels) +
      content,
  );
}

/** Logarithmic frequency with the nominal octave centres as labels; half a third of room at both ends. */
export function frequencyAxis(nominalHz: readonly number[], size: ChartSize): Axis {
  const first = nominalHz[0] ?? 50;
  const last = nominalHz[nominalHz.length - 1] ?? 5000;
  const scale = scaleLog()
    .domain([first / 1.06, last * 1.06])
    .range([margins.left, size.width - margins.right]);
  return {
    at: (hz) => scale(hz),
    ticks: octaveNames.filter((hz) => hz >= first && hz <= last).map((hz) => ({ value: hz, label: bandName(hz) })),
    label: 'Hz',
  };
}

const octaveNames = [16, 31.5, 63, 125, 250, 500, 1000, 2000, 4000, 8000, 16000];

/** A linear vertical axis over whole tens (or what suits the span) that covers `values`. */
export function linearAxis(values: Iterable<number>, size: ChartSize, label: string, step = 10, least = 0): Axis {
  const finite = [...values].filter(Number.isFinite);
  const low = Math.min(least, Math.floor(Math.min(...finite, least) / step) * step);
  const high = Math.max(low + 2 * step, Math.ceil(Math.max(...finite, least) / step) * step);
  const scale = scaleLinear()
    .domain([low, high])
    .range([size.height - margins.bottom, margins.top]);
  return {
    at: (value) => scale(value),
    ticks: ticks(low, high, Math.min(8, (high - low) / step)).map((value) => ({ value, label: String(value) })),
    label,
  };
}
