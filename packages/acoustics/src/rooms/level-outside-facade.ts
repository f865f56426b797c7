import type { Air } from '../air/air-properties.js';
import { levelOf } from '../levels/level-of.js';
import { requirePositive } from './require-positive.js';

/** Level just outside an element below the level inside less its transmission loss: a diffuse field meets it from one side. */
const diffuseToOutside = 6;
const referenceImpedance = 400;

/**
 * Level outdoors at a distance from a facade, from the level in the room behind it, in one band, dB.
 *
 * Equation: L_W = L_in - R - 6 + 10 lg S; L = L_W - 10 lg(2 pi d^2) + 10 lg(rho c / 400), and no more than close to the
 * element, L_W - 10 lg S. Units: levels and transmission loss dB, area S m2, distance d m.
 * Source: EN 12354-4:2000, radiation of a segment with the diffusity term -6 dB, spread over a half sphere (from memory).
 * Valid: for open ground without other walls; beyond a few sizes of the element. Air, ground and screens are left out.
 * Errors: ArgumentError for an area or distance that isn't above zero.
 */
export function levelOutsideFacade(
  inside: number,
  transmissionLoss: number,
  area: number,
  distance: number,
  air: Air,
): number {
  requirePositive('area of the element', area, 'square metres');
  requirePositive('distance from the facade', distance, 'metres');
  const power = inside - transmissionLoss - diffuseToOutside + levelOf(area);
  const spread = Math.max(2 * Math.PI * distance ** 2, area);
  return power - levelOf(spread) + levelOf(air.impedance / referenceImpedance);
}
