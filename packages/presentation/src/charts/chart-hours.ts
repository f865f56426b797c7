import type { HoursResult, Verdict } from '@boothwright/assessment';
import { type Axis, type ChartSize, chartFrame, hoverSize, linearAxis, margins } from './frame.js';
import { type LegendEntry, legendIn } from './legend.js';
import { palette } from './palette.js';
import { dataList, svgElement } from './svg-element.js';

export interface HoursChart {
  readonly title: string;
  readonly description: string;
  readonly hours: HoursResult;
  readonly size?: ChartSize;
}

/** Noise inside around the clock, which hours meet what is asked, and when the session is. */
export function chartHours(chart: HoursChart): string {
  const size = chart.size ?? hoverSize;
  const { hours } = chart;
  const step = (size.width - margins.left - margins.right) / 24;
  const x: Axis = {
    at: (hour) => margins.left + hour * step,
    ticks: [0, 3, 6, 9, 12, 15, 18, 21, 24].map((value) => ({ value, label: String(value) })),
    label: 'h',
  };
  const states = hours.stateOfHour.map((state) => hours.states[state]);
  const levels = states.map((state) => state?.dBA?.value ?? null);
  const y = linearAxis(
    states.flatMap((state) => (state?.dBA ? [state.dBA.low, state.dBA.high] : [])),
    size,
    'noise inside, dBA',
  );
  const bar = (hour: number, low: number, high: number) => {
    const top = y.at(high);
    return `M${x.at(hour).toFixed(1)} ${top.toFixed(1)}h${step.toFixed(1)}v${(y.at(low) - top).toFixed(1)}h${(-step).toFixed(1)}z`;
  };
  const range = states.map((state, hour) => (state?.dBA ? bar(hour, state.dBA.low, state.dBA.high) : '')).join('');
  const bottom = size.height - margins.bottom;
  const asked = hours.requirements.length > 0;
  const verdicts = states.map((state) => verdictOf(state?.verdicts ?? []));
  const strip = (verdict: Verdict) =>
    verdicts
      .map((each, hour) => (each === verdict ? `M${x.at(hour).toFixed(1)} ${bottom - 3}h${step.toFixed(1)}` : ''))
      .join('');
  const content = [
    session(hours, x, bottom),
    svgElement('path', { class: 'range', d: range, fill: palette.blue, 'fill-opacity': '0.25' }),
    svgElement('path', {
      class: 'inside',
      d: stairs(levels, x, y),
      fill: 'none',
      stroke: palette.blue,
      'stroke-width': 2,
      'data-values': dataList(levels),
    }),
    asked && svgElement('path', { class: 'met', d: strip('met'), stroke: palette.green, 'stroke-width': 6 }),
    asked &&
      svgElement('path', {
        class: 'missed',
        d: strip('missed'),
        stroke: palette.orange,
        'stroke-width': 6,
        'stroke-dasharray': '2 2',
      }),
  ];
  const names: LegendEntry[] = [
    { label: 'inside', colour: palette.blue },
    ...(asked && verdicts.includes('met') ? [{ label: 'met', colour: palette.green }] : []),
    ...(asked && verdicts.includes('missed') ? [{ label: 'missed', colour: palette.orange, dash: '2 2' }] : []),
    ...(hours.session === null ? [] : [{ label: 'session', colour: palette.purple, dash: '5 3' }]),
  ];
  return chartFrame({
    size,
    title: chart.title,
    description: chart.description,
    x,
    y,
    content: content.filter(Boolean).join('') + legendIn(size, names, y.label),
    attributes: { 'data-verdicts': verdicts.join(',') },
  });
}

/** All of what is asked of an hour taken together. */
function verdictOf(verdicts: readonly Verdict[]): Verdict | 'none' {
  if (verdicts.length === 0) return 'none';
  if (verdicts.includes('missed')) return 'missed';
  return verdicts.every((verdict) => verdict === 'met') ? 'met' : 'not-assessed';
}

function stairs(levels: readonly (number | null)[], x: Axis, y: Axis): string {
  return levels
    .map((level, hour) => {
      if (level === null) return '';
      const joined = hour > 0 && levels[hour - 1] !== null;
      return `${joined ? `V${y.at(level).toFixed(1)}` : `M${x.at(hour).toFixed(1)} ${y.at(level).toFixed(1)}`}H${x.at(hour + 1).toFixed(1)}`;
    })
    .join('');
}

/** From its start to its end, and again from midnight where it goes on past it. */
function session({ session: of }: HoursResult, x: Axis, bottom: number): string {
  if (of === null) return '';
  const start = of.startsMinutes / 60;
  const end = of.endsMinutes / 60;
  const spans: [number, number][] =
    end > 24 || end <= start
      ? [
          [start, 24],
          [0, end > 24 ? end - 24 : end],
        ]
      : [[start, end]];
  return svgElement('path', {
    class: 'session',
    d: spans
      .map(
        ([from, to]) =>
          `M${x.at(from).toFixed(1)} ${margins.top}H${x.at(to).toFixed(1)}V${bottom}H${x.at(from).toFixed(1)}z`,
      )
      .join(''),
    fill: palette.purple,
    'fill-opacity': '0.15',
    stroke: palette.purple,
    'stroke-dasharray': '5 3',
    'data-values': dataList(spans.flat()),
  });
}
