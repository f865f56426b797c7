import type { AirCurve } from '../result/air-result.js';
import { decimals } from '../text/decimals.js';

/** `1000 ppm after 4.4 min, 1500 ppm after 10 min ...`; levels that are never passed are left out. */
export function minutesWords({ minutesTo }: AirCurve): string {
  const parts = (['1000', '1500', '2500', '5000'] as const).flatMap((level) => {
    const minutes = minutesTo[level];
    if (minutes === null) return [];
    return [
      `${level} ppm ${minutes === 0 ? 'from the start' : `after ${decimals(minutes, minutes < 10 ? 1 : 0)} min`}`,
    ];
  });
  return parts.length === 0 ? 'no level of 1000 ppm or more within a day' : parts.join(', ');
}
