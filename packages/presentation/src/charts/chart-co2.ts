import type { AirCurve, AirResult } from '@boothwright/assessment';
import { type ChartSize, hoverSize } from './frame.js';
import { timeCurves } from './time-curves.js';

export interface Co2Chart {
  readonly title: string;
  readonly description: string;
  readonly air: AirResult;
  /** The level that a requirement allows, in ppm. */
  readonly limitPpm?: number;
  readonly size?: ChartSize;
}

/** ppm; a closed box goes on far above what anyone waits for, and would press the curves that matter flat. */
const mostShown = 3000;

/** CO2 against time, fan off, low and high. */
export function chartCo2({ title, description, air, limitPpm, size = hoverSize }: Co2Chart): string {
  const curves = [air.fanHigh, air.fanLow, air.fanOff].filter((curve): curve is AirCurve => curve !== null);
  const ends = curves.filter(({ setting }) => setting !== 'off').flatMap(({ ppm }) => ppm);
  const atMost = Math.max(mostShown, 1.2 * (limitPpm ?? 0), ...ends.map((ppm) => 1.2 * ppm));
  const highest = Math.min(atMost, Math.max(1000, limitPpm ?? 0, ...curves.flatMap((curve) => curve.ppm)));
  return timeCurves({
    title,
    description,
    size,
    curves: curves.map(({ setting, minutes, ppm }) => ({ setting, minutes, values: ppm })),
    label: 'CO₂, ppm',
    step: highest > 6000 ? 2000 : highest > 3000 ? 1000 : 500,
    atLeast: 1000,
    atMost,
    ...(limitPpm === undefined ? {} : { limit: limitPpm }),
    rounded: Math.round,
  });
}
