import type { HeatResult } from '@boothwright/assessment';
import { type ChartSize, hoverSize } from './frame.js';
import { timeCurves } from './time-curves.js';

export interface TemperatureChart {
  readonly title: string;
  readonly description: string;
  readonly heat: HeatResult;
  /** The rise that a requirement allows, K. */
  readonly limitK?: number;
  readonly size?: ChartSize;
}

/** How much warmer than the room it gets, against time, fan off, low and high. */
export function chartTemperature({ title, description, heat, limitK, size = hoverSize }: TemperatureChart): string {
  const highest = Math.max(limitK ?? 0, ...heat.bySetting.flatMap(({ riseK }) => riseK));
  const order = ['high', 'low', 'off'] as const;
  return timeCurves({
    title,
    description,
    size,
    curves: order.flatMap((setting) =>
      heat.bySetting
        .filter((each) => each.setting === setting)
        .map(({ minutes, riseK }) => ({ setting, minutes, values: riseK })),
    ),
    label: 'warmer than the room by, K',
    step: highest > 12 ? 5 : highest > 5 ? 2 : 1,
    atLeast: 1,
    ...(limitK === undefined ? {} : { limit: limitK }),
    rounded: (value) => Math.round(value * 10) / 10,
  });
}
