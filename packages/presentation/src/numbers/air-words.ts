import type { AirCurve, AirResult } from '@boothwright/assessment';
import { formatNumber } from './format-number.js';
import { formatQuantity } from './format-quantity.js';

/** Minutes as a performer reads them: `12 min`, `3 h 20 min`, `never within 24 h`. */
export function minutesText(minutes: number | null): string {
  if (minutes === null) return 'not within 24 h';
  if (minutes <= 0) return 'from the start';
  if (minutes < 10) return `${formatNumber(minutes, 1)} min`;
  if (minutes < 120) return `${formatNumber(minutes)} min`;
  const whole = Math.round(minutes);
  return `${Math.floor(whole / 60)} h ${whole % 60} min`;
}

/** One sentence per state of the fan: the level at the end of the session and the minutes to the levels that matter. */
export function airSentences(air: AirResult): readonly string[] {
  const curves = [air.fanOn, air.fanOff].filter((curve): curve is AirCurve => curve !== null);
  return curves.map((curve) => {
    const flow = curve.flowM3PerS > 0 ? ` (${formatNumber(curve.flowM3PerS * 1000, 1)} L/s)` : '';
    return (
      `fan ${curve.fan}${flow}: ${formatQuantity(curve.endPpm, 'ppm')} after ${formatNumber(air.sessionMinutes)} min, ` +
      `1000 ppm ${timeTo(curve, '1000')}, 1500 ppm ${timeTo(curve, '1500')}, 2500 ppm ${timeTo(curve, '2500')}`
    );
  });
}

function timeTo(curve: AirCurve, level: '1000' | '1500' | '2500'): string {
  const minutes = curve.minutesTo[level];
  return minutes === null || minutes <= 0 ? minutesText(minutes) : `after ${minutesText(minutes)}`;
}
