import type { BoothResult } from '@boothwright/assessment';
import { roomLeftText } from '../numbers/trade-units.js';

/** `every piece goes, 26 mm left`, `7 pieces do not go`; undefined where it is not known. */
export function wayLabel(way: string, { moving }: BoothResult): string | undefined {
  const passes = moving?.cards.flatMap(({ ways }) => ways.filter((each) => each.way === way)) ?? [];
  if (passes.length === 0) return undefined;
  const stuck = passes.filter((each) => each.passes === 'does-not-go').length;
  if (stuck > 0) return `${stuck} ${stuck === 1 ? 'piece does' : 'pieces do'} not go`;
  const left = Math.min(...passes.map(({ leftM }) => leftM));
  return `every piece goes, ${roomLeftText(left)} left`;
}
