import type { AssemblyResult } from '@boothwright/assessment';
import { formatNumber } from '../numbers/format-number.js';
import { ratingText } from '../numbers/rating-text.js';
import { shownRatings } from '../numbers/shown.js';
import { surfaceMassText } from '../numbers/trade-units.js';

/** `STC 41 · 24.3 kg/m² · f₀ 112 Hz`, with the ratings that were asked for. */
export function assemblyLabel(result: AssemblyResult): string {
  const [first] = result.resonancesHz;
  return [
    ...shownRatings().map((name) => ratingText(name, result)),
    surfaceMassText(result.surfaceMassKgPerM2),
    ...(first === undefined ? [] : [`f₀ ${formatNumber(first)} Hz`]),
  ].join(' · ');
}
