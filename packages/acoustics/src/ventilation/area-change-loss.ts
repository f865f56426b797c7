import { requireNumber } from '../errors/require-number.js';
import { levelOf } from '../levels/level-of.js';

/**
 * Loss by reflection where a duct changes its area at once, dB, the same in either direction.
 *
 * Equation: 10 lg((1 + r)^2/(4 r)), r the ratio of the areas. Units: areas m2.
 * Source: published in an engineering reference, "Duct Area Change Noise Attenuation" (read at secondary hand); it is the
 * plane-wave transmission coefficient. Valid: below the first higher mode of the wider duct.
 * Errors: ArgumentError for an area that can't be.
 */
export function areaChangeLoss(from: number, to: number): number {
  requireNumber('duct area before the change', from, { above: 0, unit: 'square metres' });
  requireNumber('duct area after the change', to, { above: 0, unit: 'square metres' });
  const ratio = from / to;
  return levelOf((1 + ratio) ** 2 / (4 * ratio));
}
