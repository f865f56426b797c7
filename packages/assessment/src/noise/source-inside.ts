import { weightedTotal } from '@boothwright/acoustics';
import { perBand } from '../bands/grid.js';
import type { Isolation } from '../booth/isolation.js';
import type { BoothResult, ByBand, Ranged } from '../result/result-document.js';
import { textRange } from '../text/text-range.js';
import { combinedHalfWidth } from '../uncertainty/combined.js';
import { levelTotals, shifted } from './level-totals.js';
import { type AirborneSource, outsideHalfWidth, outsideSpectrum } from './outside-spectrum.js';

export interface HeardSource {
  readonly result: BoothResult['noise']['bySource'][number];
  /** dB by band: that of the booth and that of the stated level, as independent errors. */
  readonly halfWidth: readonly number[];
}

/** One airborne source outside and inside, and what each path brings. */
export function sourceInside(source: AirborneSource, isolation: Isolation): HeardSource {
  const outside = outsideSpectrum(source);
  const inside = levelsInside(outside, isolation);
  const stated = outsideHalfWidth(source);
  const halfWidth = perBand((band) => combinedHalfWidth(isolation.halfWidth[band] as number, stated[band] as number));
  const result = {
    name: source.name,
    range: textRange(source.range),
    outside: levelTotals(outside, stated, 'levels as stated'),
    inside: levelTotals(inside, halfWidth, `${source.name} through the booth`),
    shares: isolation.shares.map((share) => share.map((value, band) => (outside[band] === null ? null : value))),
    // What the booth takes off does not depend on how well the level outside is known.
    differenceDbA: differenceDbA(outside, inside, isolation.halfWidth),
    inTotal: true,
  };
  return { result, halfWidth };
}

export function levelsInside(outside: ByBand, isolation: Isolation): ByBand {
  return outside.map((level, band) => (level === null ? null : level - (isolation.difference[band] as number)));
}

/** A-weighted level outside less inside, for this source's own spectrum. */
function differenceDbA(outside: ByBand, inside: ByBand, halfWidth: readonly number[]): Ranged | null {
  const before = weightedTotal(outside, 'A');
  const after = weightedTotal(inside, 'A');
  const lowest = weightedTotal(shifted(inside, halfWidth, -1), 'A');
  const highest = weightedTotal(shifted(inside, halfWidth, 1), 'A');
  if (before === null || after === null || lowest === null || highest === null) return null;
  return {
    value: before - after,
    low: before - highest,
    high: before - lowest,
    basis: 'A-weighted level outside less inside, for the spectrum of this source; docs/models/noise-inside.md',
  };
}
