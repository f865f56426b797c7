import type { LevelTotals, Ranged } from '@boothwright/assessment';
import { formatNumber } from './format-number.js';
import { formatQuantity, formatRange } from './format-quantity.js';

/** `21 dBA (18 to 24)`; `–` when not assessed. */
export function rangedText(ranged: Ranged | null, unit: string): string {
  if (!ranged) return '–';
  const range = ranged.low === ranged.high ? '' : ` (${formatRange(ranged.low, ranged.high, unit)})`;
  return formatQuantity(ranged.value, unit) + range;
}

/** `21 dBA (18 to 24), 43 dB unweighted (40 to 46), NC 17 set by 125 Hz`. */
export function totalsText(totals: LevelTotals): string {
  const parts = [
    rangedText(totals.dBA, 'dBA'),
    totals.dBZ && `${rangedText(totals.dBZ, 'dB')} unweighted`,
    totals.nc &&
      totals.nc.text + (totals.nc.governingHz === null ? '' : ` set by ${formatNumber(totals.nc.governingHz)} Hz`),
  ];
  return parts.filter(Boolean).join(', ');
}

/** A band level in whole dB; `–` when not assessed. */
export function bandLevel(level: number | null | undefined): string {
  return level === null || level === undefined ? '–' : formatNumber(level);
}

/** A share 0..1 in per cent: `38 %`, `0.4 %`, `<0.1 %`, `–`. */
export function shareText(share: number | null | undefined): string {
  if (share === null || share === undefined) return '–';
  const percent = 100 * share;
  if (percent > 0 && percent < 0.1) return '<0.1 %';
  return `${formatNumber(percent, percent < 1 && percent > 0 ? 1 : 0)} %`;
}
