import type { BoothResult } from '@boothwright/assessment';
import { formatQuantity } from '../numbers/format-quantity.js';

/** `45 dBA outside, 21 dBA inside`; undefined when the booth does not hear the source. */
export function sourceLabel(name: string, booth: BoothResult): string | undefined {
  const source = booth.noise.bySource.find((entry) => entry.name === name);
  if (!source) return booth.noise.notPredicted.some((entry) => entry.name === name) ? 'not predicted' : undefined;
  const level = (totals: typeof source.inside) =>
    totals.dBA ? formatQuantity(totals.dBA.value, 'dBA') : 'not assessed';
  return `${level(source.outside)} outside, ${level(source.inside)} inside`;
}
