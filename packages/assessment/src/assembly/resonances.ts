import { type Air, cavityResonances, heatRatio } from '@boothwright/acoustics';
import type { Construction, Gap } from './construction.js';

/**
 * Thickness of an unfilled gap with the same spring, m. Fibre holds the air in it at constant temperature at low
 * frequency, so the filled share counts more by the ratio of heats of air: d_eff = d_air + gamma d_fill.
 * Evidence: common practice (isothermal limit); the fill is taken to be dense enough for the full effect.
 */
export function springThickness(gap: Gap, air: Air): number {
  return gap.air + heatRatio(air) * gap.fill;
}

/** Resonances of masses in kg/m2 on the gaps between them, Hz, ascending. */
export function leavesOnAirHz(masses: readonly number[], gaps: readonly Gap[], air: Air): number[] {
  return cavityResonances(
    masses,
    gaps.map((gap) => ({ thickness: springThickness(gap, air) })),
    air,
  );
}

/**
 * Resonances of the leaves on the air between them, Hz, ascending; none for one leaf. An empty gap of no depth is no
 * spring, so leaves count only where something lies between them.
 */
export function resonancesOf({ leaves, gaps }: Construction, air: Air): number[] {
  if (leaves.length < 2) return [];
  return leavesOnAirHz(
    leaves.map((leaf) => leaf.mass),
    gaps,
    air,
  );
}
