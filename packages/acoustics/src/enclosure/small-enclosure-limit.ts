import type { Air } from '../air/air-properties.js';
import { type BoxSize, firstCavityMode } from './box-modes.js';

/**
 * Frequency up to which `smallEnclosureLevelDifference` may be relied on, Hz: half the first mode of the inside.
 *
 * There a quarter of a wavelength fits between opposite walls; when all walls move alike the pressure at the walls and in
 * the middle differs by the cosine of an eighth of a turn, 3 dB, along the longest side. Above it the pressure inside is
 * not uniform.
 * Equation: c/(4 L), L the longest side in m, c in m/s. Source: derived.
 */
export function smallEnclosureLimit(size: BoxSize, air: Air): number {
  return firstCavityMode(size, air) / 2;
}
