import type { Booth } from '@boothwright/language';
import type { VentilationResult } from '../result/air-result.js';
import { freshAir } from './fresh-air.js';

/**
 * Why nothing renews the air of a booth: it has no vent, vents without a fan, one fan without a second opening, fans that all blow
 * the same way, or a fan that its path holds back altogether.
 */
export type NoAir = 'no-vent' | 'no-fan' | 'no-way-out' | 'all-one-way' | 'held-back';

/** The reason, for a booth of which it is known that no air passes. */
export function whyNoAir(booth: Booth, { low, high }: VentilationResult): NoAir {
  if (booth.vents.length === 0) return 'no-vent';
  const { way } = freshAir(booth);
  if (way === 'no-way-out')
    return booth.vents.filter(({ fan }) => fan !== undefined).length > 1 ? 'all-one-way' : 'no-way-out';
  const unmet = [low, high].some((flow) => flow !== null && flow.flowM3PerS === null);
  return way !== 'no-fan' && unmet ? 'held-back' : 'no-fan';
}
