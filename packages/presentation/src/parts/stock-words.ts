import type { Money, StockResult } from '@boothwright/assessment';
import { formatNumber } from '../numbers/format-number.js';

/** `7 sheets of`, `at least 9.4 m² of`, `48 lengths of`. */
export function quantityText({ quantity, unit, atLeast }: Pick<StockResult, 'quantity' | 'unit' | 'atLeast'>): string {
  const words = {
    sheet: () => `${formatNumber(quantity)} ${quantity === 1 ? 'sheet' : 'sheets'} of`,
    length: () => `${formatNumber(quantity)} ${quantity === 1 ? 'length' : 'lengths'} of`,
    m2: () => `${formatNumber(quantity, 1)} m² of`,
    m: () => `${formatNumber(quantity, 1)} m of`,
  } as const;
  const loose = atLeast && (unit === 'sheet' || unit === 'length');
  return `${loose ? 'at least ' : ''}${words[unit]()}`;
}

/** `266 EUR`; amounts below ten with cents. */
export function costText({ amount, currency }: Money): string {
  return `${formatNumber(amount, Math.abs(amount) < 10 ? 2 : 0)} ${currency}`;
}

/** `30 %`. */
export function shareText(share: number): string {
  return `${formatNumber(share * 100)} %`;
}
