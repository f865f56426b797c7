import { requireNumber } from '../errors/require-number.js';
import type { Field, Layer } from './layer.js';
import type { Leaf } from './leaf.js';
import { isPresent } from './prepared-stack.js';

/** Surface mass up to which the formula was stated, kg/m2. */
const heaviest = 800;

/**
 * Loss factor that a built-in plate gains by what it passes on at its edges to the structure around it.
 *
 * Equation: eta = m/(485 sqrt f), m in kg/m2, f in Hz; the surface mass counts up to 800 kg/m2. It matters for masonry:
 * 240 kg/m2 gain 0.022 at 500 Hz, a board of 10 kg/m2 gains 0.001.
 * Source: ISO 12354-1:2017, Annex C, total loss factor in a laboratory, eta = eta_internal + m/(485 sqrt f) (from memory).
 * Errors: ArgumentError for a mass below 0 or a frequency that isn't above 0.
 */
export function edgeLossFactor(surfaceMass: number, hz: number): number {
  requireNumber('surface mass', surfaceMass, { atLeast: 0, unit: 'kg/m2' });
  requireNumber('frequency', hz, { above: 0, unit: 'Hz' });
  return Math.min(surfaceMass, heaviest) / (485 * Math.sqrt(hz));
}

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
