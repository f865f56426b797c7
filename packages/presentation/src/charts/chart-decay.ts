import type { BandDecay, DecayMethod } from '@boothwright/assessment';
import { type ChartSize, chartFrame, frequencyAxis, hoverSize, linearAxis, margins } from './frame.js';
import { legendIn } from './legend.js';
import { palette } from './palette.js';
import { bandPath, linePath } from './series-path.js';
import { dataList, svgElement, svgText } from './svg-element.js';

export interface DecayChart {
  readonly title: string;
  readonly description: string;
  /** By third octave, ascending. */
  readonly decay: readonly BandDecay[];
  /** What requirements allow, each at its band. */
  readonly limits?: readonly { readonly hz: number; readonly seconds: number }[];
  readonly size?: ChartSize;
}

const methodNames: Readonly<Record<DecayMethod, string>> = {
  modes: 'single modes',
  both: 'both',
  statistical: 'even field',
  dry: 'dry field',
  none: 'none',
};

/** How long sound rings by band, with its range, and in which bands which model speaks. */
export function chartDecay(chart: DecayChart): string {
  const size = chart.size ?? hoverSize;
  const { decay } = chart;
  const limits = chart.limits ?? [];
  const hz = decay.map((band) => band.hz);
  const x = frequencyAxis(hz, size);
  const known = [...decay.map(({ highS }) => highS ?? 0), ...limits.map(({ seconds }) => seconds)];
  const highest = Math.max(...known, 0);
  // Room for the names of the models above the highest line.
  const y = linearAxis([highest * 1.15], size, 'decay by 60 dB, s', highest > 1 ? 0.5 : highest > 0.4 ? 0.1 : 0.05);
  const stretches = runs(decay, ({ lowS, highS }) => lowS !== null && highS !== null).filter(({ key }) => key);
  const range = stretches
    .map(({ bands }) =>
      bandPath(
        bands.map((band) => band.hz),
        bands.map(({ lowS }) => lowS ?? 0),
        bands.map(({ highS }) => highS ?? 0),
        x,
        y,
      ),
    )
    .join('');
  const content = [
    svgElement('path', { class: 'range', d: range, fill: palette.blue, 'fill-opacity': '0.25' }),
    svgElement('path', {
      class: 'decay',
      d: linePath(
        hz,
        decay.map(({ seconds }) => seconds),
        x,
        y,
      ),
      fill: 'none',
      stroke: palette.blue,
      'stroke-width': 2,
      'data-values': dataThousandths(decay.map(({ seconds }) => seconds)),
    }),
    modelMarks(decay, x, size),
    ...limits.map(({ hz: at, seconds }) =>
      svgElement('path', {
        class: 'limit',
        d: `M${(x.at(at) - 13).toFixed(1)} ${y.at(seconds).toFixed(1)}h26`,
        stroke: palette.orange,
        'stroke-width': 2.5,
        'data-values': dataThousandths([seconds]),
      }),
    ),
  ];
  const names = [
    { label: 'predicted, with range', colour: palette.blue },
    ...(limits.length === 0 ? [] : [{ label: 'limit', colour: palette.orange }]),
  ];
  return chartFrame({
    size,
    title: chart.title,
    description: chart.description,
    x,
    y,
    content: content.join('') + legendIn(size, names, y.label),
    attributes: { 'data-hz': dataList(hz) },
  });
}

/** A line where one model gives way to the next, and the name of each where it has room. */
function modelMarks(decay: readonly BandDecay[], x: { at: (hz: number) => number }, size: ChartSize): string {
  const bottom = size.height - margins.bottom;
  const all = runs(decay, ({ method }) => method);
  // Halfway between two bands on a logarithmic axis.
  const edges = all.slice(1).map(({ bands: [first], before }) => (x.at(first!.hz) + x.at(before!.hz)) / 2);
  const lines = edges.map((edge) => `M${edge.toFixed(1)} ${margins.top}V${bottom}`).join('');
  const names = all.map(({ key }, index) => {
    const left = edges[index - 1] ?? margins.left;
    const right = edges[index] ?? size.width - margins.right;
    const name = methodNames[key];
    return right - left < name.length * 6.2
      ? ''
      : svgText(name, { x: (left + right) / 2, y: margins.top + 12, 'text-anchor': 'middle' });
  });
  return (
    svgElement('path', {
      class: 'models',
      d: lines,
      stroke: palette.grey,
      'stroke-dasharray': '2 3',
      'data-values': all.map(({ key, bands }) => `${key} ${bands.length}`).join(','),
    }) + svgElement('g', { fill: palette.grey, 'font-family': 'sans-serif', 'font-size': 11 }, names.join(''))
  );
}

interface Run<K> {
  readonly key: K;
  readonly bands: readonly BandDecay[];
  /** The last band of the run before. */
  readonly before: BandDecay | undefined;
}

/** Neighbouring bands that are alike. */
function runs<K>(decay: readonly BandDecay[], keyOf: (band: BandDecay) => K): Run<K>[] {
  const found: { key: K; bands: BandDecay[]; before: BandDecay | undefined }[] = [];
  for (const [index, band] of decay.entries()) {
    const key = keyOf(band);
    const last = found.at(-1);
    if (last !== undefined && last.key === key) last.bands.push(band);
    else found.push({ key, bands: [band], before: decay[index - 1] });
  }
  return found;
}

/** Seconds of small rooms differ in the thousandths. */
function dataThousandths(values: readonly (number | null)[]): string {
  return values.map((value) => (value === null ? '' : String(Math.round(value * 1000) / 1000))).join(',');
}
