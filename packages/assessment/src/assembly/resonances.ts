import { type Air, cavityResonances } from '@boothwright/acoustics';
import type { Construction, Gap } from './construction.js';

/** Ratio of specific heats of air; the spring of air in fibre, compressed at constant temperature, is softer by it. */
const heatRatio = 1.4;

/**
 * Thickness of an unfilled gap with the same spring, m. Fibre holds the air in it at constant temperature at low
 * frequency, so the filled share counts 1.4 times: d_eff = d_air + 1.4 d_fill.
 * Evidence: common practice (isothermal limit); the fill is taken to be dense enough for the full effect.
 */
export function springThickness(gap: Gap): number {
  return gap.air + heatRatio * gap.fill;
}

/**
 * Resonances of the leaves on the air between them, Hz, ascending; none for one leaf. An empty gap of no depth is no
 * spring, so leaves count only where something lies between them.
 */
export function resonancesOf(construction: Construction, air: Air): number[] {
  if (construction.leaves.length < 2) return [];
  return cavityResonances(
    construction.leaves.map((leaf) => leaf.mass),
    construction.gaps.map((gap) => ({ thickness: springThickness(gap) })),
    air,
  );
}
