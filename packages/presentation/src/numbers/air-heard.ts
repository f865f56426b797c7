import { sumLevels, weightedTotal } from '@boothwright/acoustics';
import type { BoothResult } from '@boothwright/assessment';
import { formatNumber } from './format-number.js';

/** `its air is heard inside at 12 dBA`, at the setting of the session; undefined where none is known to move. */
export function airHeardText(vent: string, { noise }: BoothResult): string | undefined {
  const levels = noise.airParts
    .filter((part) => part.vent === vent)
    .flatMap(({ byBand }) => weightedTotal(byBand, 'A') ?? []);
  if (levels.length === 0) return undefined;
  const together = sumLevels(levels);
  return `its air is heard inside at ${together < 0 ? 'less than 0' : formatNumber(together)} dBA`;
}
