import type { BoothResult } from '@boothwright/assessment';
import { formatNumber } from '../numbers/format-number.js';
import { stockText } from '../numbers/trade-units.js';

/** `11 needed`, `no part uses it`; nothing for an item that buys enough or names no material. */
export function itemLabel(item: string, { build }: BoothResult): string | undefined {
  const check = build.shopping.checks.find(({ items }) => items.includes(item));
  if (check === undefined || check.verdict === 'enough') return undefined;
  if (check.verdict === 'unused') return 'no part uses it';
  const needed = stockText(check.needed, check.unit, formatNumber(check.needed));
  return `${check.atLeast ? 'at least ' : ''}${needed} needed`;
}
