import type { Air } from '../air/air-properties.js';
import { requireNumber } from '../errors/require-number.js';
import type { Layer } from './layer.js';
import { leafAt } from './leaf.js';
import { isPresent } from './prepared-stack.js';

/**
 * How far the bending stiffness of the leaves of one wall is drawn apart, as a share of it.
 * Common practice: sheets of one name differ by ten percent in stiffness; the thickness of a 6 mm pane is held to 0.2 mm,
 * which is ten percent of its stiffness.
 */
export const defaultStiffnessSpread = 0.1;

/**
 * The layers of a wall with the stiffness of its leaves drawn apart by `spread` in all, half of it to either side: the leaf
 * with the lowest critical frequency becomes stiffer, the one with the highest less stiff, the others in even steps.
 *
 * Two leaves that are exactly the same would both be transparent at the same angle and frequency, which no two real
 * sheets are: the dip at coincidence of a double wall would come out too deep. A wall of one leaf stays as it is.
 * Source: derived. Errors: ArgumentError when the spread is not from 0 up to 1.
 */
export function unlikeLeaves(layers: readonly Layer[], air: Air, spread: number): readonly Layer[] {
  requireNumber('spread of stiffness', spread, { atLeast: 0, below: 1 });
  const leaves: { first: number; last: number; criticalHz: number }[] = [];
  for (let index = 0; index < layers.length; index++) {
    const layer = layers[index]!;
    if (layer.kind !== 'plate' || !isPresent(layer) || layer.youngsModulus === 0) continue;
    if (leaves.some(({ first, last }) => index >= first && index <= last)) continue;
    leaves.push(leafAt(layers, index, air));
  }
  if (leaves.length < 2) return layers;
  const changed = Array.from(layers);
  leaves
    .sort((a, b) => a.criticalHz - b.criticalHz)
    .forEach(({ first, last }, order) => {
      const factor = 1 + spread * (0.5 - order / (leaves.length - 1));
      for (let index = first; index <= last; index++) {
        const layer = layers[index]!;
        if (layer.kind !== 'plate') continue;
        const { crossModulus } = layer;
        changed[index] = {
          ...layer,
          youngsModulus: layer.youngsModulus * factor,
          ...(crossModulus === undefined ? {} : { crossModulus: crossModulus * factor }),
        };
      }
    });
  return changed;
}
