import { svgElement, svgText } from '../../packages/presentation/src/charts/svg-element.js';

/** One small chart: measured values as dots, predictions as a line; dB or absorption over the octaves. */
export interface Panel {
  readonly title: string;
  readonly measured: readonly number[];
  readonly predicted: readonly number[];
}

/** What the panels of a picture share. */
export interface PlotSettings {
  readonly title: string;
  readonly description: string;
  readonly bandNames: readonly string[];
  readonly highest: number;
  readonly step: number;
}

const columns = 5;
const cell = { width: 164, height: 128 } as const;
const inner = { left: 24, right: 6, top: 20, bottom: 18 } as const;
const head = 26;
const colours = { ink: '#444444', grid: '#dddddd', measured: '#c2410c', predicted: '#1d4ed8' } as const;

/** A picture of small charts on one scale, on a white ground so that it reads in dark pages as well. */
export function smallMultiples(panels: readonly Panel[], settings: PlotSettings): string {
  const width = columns * cell.width;
  const height = head + Math.ceil(panels.length / columns) * cell.height;
  const content = panels.map((panel, index) => {
    const x = (index % columns) * cell.width;
    const y = head + Math.floor(index / columns) * cell.height;
    return svgElement('g', { transform: `translate(${x} ${y})` }, panelContent(panel, settings));
  });
  const key =
    svgElement('circle', { cx: 10, cy: 12, r: 2.5, fill: colours.measured }) +
    svgText('measured', { x: 18, y: 16 }) +
    svgElement('path', { d: 'M84 12H104', stroke: colours.predicted, 'stroke-width': 1.5 }) +
    svgText(`predicted; ${settings.title}`, { x: 110, y: 16 });
  return `${svgElement(
    'svg',
    { xmlns: 'http://www.w3.org/2000/svg', role: 'img', width, height, viewBox: `0 0 ${width} ${height}` },
    `${svgElement('title', {}, settings.title)}${svgElement('desc', {}, settings.description)}` +
      svgElement('rect', { width, height, fill: '#ffffff' }) +
      svgElement('g', { 'font-family': 'sans-serif', 'font-size': 11, fill: colours.ink }, key + content.join('\n')),
  )}\n`;
}

function panelContent(panel: Panel, { bandNames, highest, step }: PlotSettings): string {
  const right = cell.width - inner.right;
  const bottom = cell.height - inner.bottom;
  const x = (band: number) => inner.left + ((band + 0.5) / bandNames.length) * (right - inner.left);
  const y = (value: number) => bottom - (Math.max(0, Math.min(value, highest)) / highest) * (bottom - inner.top);
  const marks = Array.from({ length: Math.floor(highest / step + 1e-9) + 1 }, (_, index) => index * step);
  const at = (value: number) => (Math.round(value * 10) / 10).toString();
  const grid = marks.map((mark) => `M${inner.left} ${at(y(mark))}H${right}`).join('');
  const line = panel.predicted.map((value, band) => `${band === 0 ? 'M' : 'L'}${at(x(band))} ${at(y(value))}`).join('');
  const small = { 'font-size': 8 } as const;
  return [
    svgText(panel.title, { x: inner.left, y: 13, 'font-size': 8.5 }),
    svgElement('path', { d: grid, stroke: colours.grid }),
    ...marks.map((mark) =>
      svgText(String(Math.round(mark * 10) / 10), {
        x: inner.left - 3,
        y: y(mark) + 3,
        'text-anchor': 'end',
        ...small,
      }),
    ),
    ...bandNames.map((name, band) => svgText(name, { x: x(band), y: bottom + 11, 'text-anchor': 'middle', ...small })),
    svgElement('path', { d: line, stroke: colours.predicted, 'stroke-width': 1.5, fill: 'none' }),
    ...panel.measured.map((value, band) =>
      svgElement('circle', { cx: x(band), cy: y(value), r: 2.2, fill: colours.measured }),
    ),
  ].join('');
}
