import type { BoothResult } from '@boothwright/assessment';
import { formatQuantity } from '../numbers/format-quantity.js';

/** `21 dBA inside · 430 kg · 2.6 kPa`. */
export function boothLabel(booth: BoothResult): string {
  const { noise, build } = booth;
  return [
    ...(noise.total.dBA ? [`${formatQuantity(noise.total.dBA.value, 'dBA')} inside`] : []),
    formatQuantity(build.massKg, 'kg'),
    formatQuantity(build.floorLoadPa, 'Pa'),
  ].join(' · ');
}
