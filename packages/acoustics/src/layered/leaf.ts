import type { Air } from '../air/air-properties.js';
import { ArgumentError } from '../errors/argument-error.js';
import { bendingStiffness } from '../panels/bending-stiffness.js';
import { criticalFrequencyOf } from '../panels/critical-frequency.js';
import { shearParameter } from '../panels/shear-parameter.js';
import type { Layer } from './layer.js';
import { isPresent } from './prepared-stack.js';

/** Plates and sheets that lie on each other and move as one. */
export type Leaf = {
  /** Indices of its first and last layer. */
  readonly first: number;
  readonly last: number;
  /** kg/m2 */
  readonly surfaceMass: number;
  /** N m; the sum of the sheets' own, which slide on each other. */
  readonly bendingStiffness: number;
  readonly lossFactor: number;
  /** Hz; infinite for a leaf without stiffness. */
  readonly criticalHz: number;
  /**
   * Hz; where free waves, made slower by shear, run as fast as sound: fc/sqrt(1 - s) with s of `shearParameter` at fc.
   * Infinite when shear waves of the leaf are slower than sound.
   */
  readonly coincidenceHz: number;
};

/**
 * The leaf that holds layer `index`.
 *
 * Masses add; bending stiffnesses add, as of sheets that are screwed but not glued; the loss factor is the mean weighted
 * with stiffness.
 * Errors: ArgumentError when the layer is neither a plate nor a sheet, or is not there.
 */
export function leafAt(layers: readonly Layer[], index: number, air: Air): Leaf {
  const layer = layers[index];
  if (layer === undefined || !isLeafPart(layer)) {
    throw new ArgumentError('place of the studs', `layer ${index + 1} of ${layers.length}`, 'a plate or a limp sheet');
  }
  let first = index;
  let last = index;
  while (first > 0 && (isLeafPart(layers[first - 1]!) || !isPresent(layers[first - 1]!))) first--;
  while (last + 1 < layers.length && (isLeafPart(layers[last + 1]!) || !isPresent(layers[last + 1]!))) last++;
  let mass = 0;
  let stiffness = 0;
  let loss = 0;
  for (const part of layers.slice(first, last + 1)) {
    if (part.kind === 'limp-sheet') mass += part.surfaceMass;
    if (part.kind !== 'plate') continue;
    mass += part.thickness * part.density;
    const own = bendingStiffness(part);
    stiffness += own;
    loss += own * part.lossFactor;
  }
  if (mass === 0) throw new ArgumentError('place of the studs', `layer ${index + 1} without mass`, 'a leaf with mass');
  const criticalHz = stiffness > 0 ? criticalFrequencyOf(mass, stiffness, air) : Number.POSITIVE_INFINITY;
  let shear = 0;
  for (const part of stiffness > 0 ? layers.slice(first, last + 1) : []) {
    if (part.kind === 'plate') shear += (bendingStiffness(part) / stiffness) * shearParameter(part, criticalHz, air);
  }
  return {
    first,
    last,
    surfaceMass: mass,
    bendingStiffness: stiffness,
    lossFactor: stiffness > 0 ? loss / stiffness : 0,
    criticalHz,
    coincidenceHz: shear < 1 ? criticalHz / Math.sqrt(1 - shear) : Number.POSITIVE_INFINITY,
  };
}

function isLeafPart(layer: Layer): boolean {
  return layer.kind === 'plate' || layer.kind === 'limp-sheet';
}
