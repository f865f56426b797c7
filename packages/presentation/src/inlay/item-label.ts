import type { BoothResult } from '@boothwright/assessment';
import { formatNumber } from '../numbers/format-number.js';

/** `11 needed`, `no part uses it`; nothing for an item that buys enough or names no material. */
export function itemLabel(item: string, { build }: BoothResult): string | undefined {
  const check = build.shopping.checks.find(({ items }) => items.includes(item));
  if (check === undefined || check.verdict === 'enough') return undefined;
  if (check.verdict === 'unused') return 'no part uses it';
  const soft = check.unit === 'm2' || check.unit === 'm';
  const needed = `${formatNumber(check.needed, soft ? 1 : 0)}${check.unit === 'm2' ? ' m²' : check.unit === 'm' ? ' m' : ''}`;
  return `${check.atLeast ? 'at least ' : ''}${needed} needed`;
}
