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

/** CO2 against time, fan off, low and high. */
export function chartCo2({ title, description, air, limitPpm, size = hoverSize }: Co2Chart): string {
  const curves = [air.fanHigh, air.fanLow, air.fanOff].filter((curve): curve is AirCurve => curve !== null);
  const highest = Math.max(1000, limitPpm ?? 0, ...curves.flatMap((curve) => curve.ppm));
  return timeCurves({
    title,
    description,
    size,
    curves: curves.map(({ setting, minutes, ppm }) => ({ setting, minutes, values: ppm })),
    label: 'CO₂, ppm',
    step: highest > 4000 ? 1000 : 500,
    atLeast: 1000,
    ...(limitPpm === undefined ? {} : { limit: limitPpm }),
    rounded: Math.round,
  });
}
