import type { RoomMode, RoomSoundResult } from '@boothwright/assessment';
import { ticks } from 'd3-array';
import { scaleLinear } from 'd3-scale';
import { type Axis, type ChartSize, chartFrame, hoverSize, linearAxis, margins } from './frame.js';
import { legendIn } from './legend.js';
import { palette } from './palette.js';
import { dataList, round, svgElement } from './svg-element.js';

export interface ModesChart {
  readonly title: string;
  readonly description: string;
  readonly modes: readonly RoomMode[];
  readonly gaps: RoomSoundResult['gaps'];
  readonly size?: ChartSize;
}

/** The looks of a mode that a voice meets, of one that none does, and of a stretch without any. */
export const modeLooks = {
  onVoice: { colour: palette.blue, dash: undefined },
  other: { colour: palette.green, dash: '2 2' },
  gap: { colour: palette.orange, dash: undefined },
} as const;

/** Each mode as a stroke at its frequency, as high as it rings long; a mode that nothing damps reaches the top. */
export function chartModes({ title, description, modes, gaps, size = hoverSize }: ModesChart): string {
  const ends = [...modes.map(({ hz }) => hz), ...gaps.map(({ toHz }) => toHz)];
  const [first, last] = [Math.min(...ends, 300), Math.max(...ends, 100)];
  const [from, to] = [Math.max(0, Math.floor((first - 10) / 20) * 20), Math.ceil((last + 5) / 20) * 20];
  const scale = scaleLinear()
    .domain([from, to])
    .range([margins.left, size.width - margins.right]);
  const x: Axis = {
    at: (hz) => scale(hz),
    ticks: ticks(from, to, 8).map((value) => ({ value, label: String(value) })),
    label: 'Hz',
  };
  const longest = Math.max(0, ...modes.map(({ decayS }) => decayS ?? 0));
  const y = linearAxis([longest], size, 'decay by 60 dB, s', longest > 1 ? 0.5 : longest > 0.4 ? 0.2 : 0.1);
  const bottom = size.height - margins.bottom;
  const strokes = (kind: 'onVoice' | 'other', drawn: readonly RoomMode[]) =>
    svgElement('path', {
      class: kind === 'onVoice' ? 'on-voice' : 'other',
      d: drawn
        .map(({ hz, decayS }) => `M${round(x.at(hz))} ${bottom}V${decayS === null ? margins.top : round(y.at(decayS))}`)
        .join(''),
      fill: 'none',
      stroke: modeLooks[kind].colour,
      'stroke-width': 2.5,
      'stroke-dasharray': modeLooks[kind].dash,
      'data-values': dataList(drawn.map(({ hz }) => hz)),
    });
  const empty = gaps.map(({ fromHz, toHz }) =>
    svgElement('rect', {
      class: 'gap',
      x: x.at(fromHz),
      y: margins.top,
      width: x.at(toHz) - x.at(fromHz),
      height: bottom - margins.top,
      fill: modeLooks.gap.colour,
      'fill-opacity': '0.2',
      'data-values': dataList([fromHz, toHz]),
    }),
  );
  const names = [
    { label: 'on a voice', ...modeLooks.onVoice },
    { label: 'other modes', ...modeLooks.other },
    ...(gaps.length > 0 ? [{ label: 'none', ...modeLooks.gap }] : []),
  ];
  return chartFrame({
    size,
    title,
    description,
    x,
    y,
    content:
      empty.join('') +
      strokes(
        'other',
        modes.filter(({ onVoice }) => onVoice.length === 0),
      ) +
      strokes(
        'onVoice',
        modes.filter(({ onVoice }) => onVoice.length > 0),
      ) +
      legendIn(size, names, y.label),
  });
}
