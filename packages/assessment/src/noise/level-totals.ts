import { noiseCriterion, thirdLevelsToOctaves, weightedTotal } from '@boothwright/acoustics';
import { knownBands } from '../bands/band-names.js';
import type { ByBand, LevelTotals, Ranged } from '../result/result-document.js';

/**
 * Single numbers of a spectrum. The range of a total lets every band err to the same side at once, which is wider than
 * independent errors would give: a leak or a careless frame moves many bands together.
 * The noise criterion needs every octave from 63 Hz to 4 kHz; with one unknown there is none.
 */
export function levelTotals(byBand: ByBand, halfWidth: readonly number[], what: string): LevelTotals {
  const basis = `${what}; from ${knownBands(byBand)}; half-widths by band from docs/models/uncertainty.md, all bands erring together`;
  const octaves = thirdLevelsToOctaves(byBand);
  const known = octaves.filter((level) => level !== null);
  return {
    byBand,
    dBA: rangedTotal(byBand, halfWidth, 'A', basis),
    dBZ: rangedTotal(byBand, halfWidth, 'Z', basis),
    nc: known.length === octaves.length ? noiseCriterion(known) : null,
  };
}

/** A weighted total with the totals of the lowered and the raised spectrum as its range. */
export function rangedTotal(
  byBand: ByBand,
  halfWidth: readonly number[],
  weighting: 'A' | 'Z',
  basis: string,
): Ranged | null {
  const value = weightedTotal(byBand, weighting);
  const low = weightedTotal(shifted(byBand, halfWidth, -1), weighting);
  const high = weightedTotal(shifted(byBand, halfWidth, 1), weighting);
  return value === null || low === null || high === null ? null : { value, low, high, basis };
}

/** A spectrum moved by its half-widths, up (1) or down (-1). */
export function shifted(byBand: ByBand, halfWidth: readonly number[], direction: 1 | -1): ByBand {
  return byBand.map((level, band) => (level === null ? null : level + direction * (halfWidth[band] as number)));
}
