import type { Ranged } from '../result/result-document.js';
import { decimals } from '../text/decimals.js';

/** `24.3 dBA (20.1 to 28.6)`. */
export function rangedWords(value: Ranged, unit: string, places = 1, factor = 1): string {
  const at = (number: number) => decimals(number * factor, places);
  const range = value.low === value.high ? '' : ` (${at(value.low)} to ${at(value.high)})`;
  return `${at(value.value)} ${unit}${range}`;
}

/** `4.3 dB to spare` or `4.3 dB too much`. */
export function marginWords(margin: number, unit: string, places = 1, worse = 'too much'): string {
  const amount = decimals(Math.abs(margin), placesToShow(margin, places));
  const words = amount === '1' && unit === 'points' ? 'point' : unit;
  return `${amount} ${words} ${margin >= 0 ? 'to spare' : worse}`;
}

/** More decimals where a margin that is there would be printed as none. */
function placesToShow(margin: number, places: number): number {
  const most = 4;
  let shown = places;
  while (shown < most && margin !== 0 && Math.abs(margin) < 0.5 * 10 ** -shown) shown += 1;
  return shown;
}
