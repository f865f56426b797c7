import { edgeLossFactor } from '../panels/edge-loss-factor.js';
import type { Field, Layer } from './layer.js';
import type { Leaf } from './leaf.js';
import { isPresent } from './prepared-stack.js';

export { edgeLossFactor };

/** Layers whose plates also lose energy at their edges, by the mass of the leaf they are in; an unlimited panel has none. */
export function builtIn(layers: readonly Layer[], hz: number, field: Field): readonly Layer[] {
  if (field.kind === 'limited') return layers;
  const inPlace = Array.from(layers);
  for (let first = 0; first < layers.length; first++) {
    if (!movesWithLeaf(layers[first]!)) continue;
    let end = first + 1;
    while (end < layers.length && movesWithLeaf(layers[end]!)) end++;
    let mass = 0;
    for (let i = first; i < end; i++) mass += massOfSheet(layers[i]!);
    const loss = edgeLossFactor(mass, hz);
    for (let i = first; i < end; i++) {
      const layer = layers[i]!;
      if (layer.kind === 'plate') inPlace[i] = { ...layer, lossFactor: layer.lossFactor + loss };
    }
    first = end;
  }
  return inPlace;
}

/** The same for a leaf. */
export function leafInPlace(leaf: Leaf, hz: number, field: Field): Leaf {
  if (field.kind === 'limited') return leaf;
  return { ...leaf, lossFactor: leaf.lossFactor + edgeLossFactor(leaf.surfaceMass, hz) };
}

function movesWithLeaf(layer: Layer): boolean {
  return layer.kind === 'plate' || layer.kind === 'limp-sheet' || !isPresent(layer);
}

function massOfSheet(layer: Layer): number {
  if (layer.kind === 'plate') return layer.density * layer.thickness;
  return layer.kind === 'limp-sheet' ? layer.surfaceMass : 0;
}
