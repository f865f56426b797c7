import type { AssemblyLayer } from '@boothwright/language';
import { constructionOf } from './construction.js';
import { fibreLayer } from './fibre-layer.js';

/** Indices of the layers that stand between leaf n and leaf n + 1, one list per gap. */
export function gapLayers(assembly: readonly AssemblyLayer[]): number[][] {
  const gaps: number[][] = [];
  let open: number[] = [];
  let leaves = 0;
  assembly.forEach((layer, index) => {
    const count = constructionOf([layer]).leaves.length;
    if (layer.kind === 'material' && count > 0) {
      if (open.length > 0 && leaves > 0) gaps.push(open);
      open = [];
      leaves += 1;
    } else if (isSpace(layer)) {
      open.push(index);
    }
  });
  return gaps;
}

/** Whether a layer keeps the leaves on both sides of it apart. */
export function isSpace(layer: AssemblyLayer): boolean {
  if (layer.kind === 'air') return layer.thickness.value > 0;
  if (layer.kind === 'frame') return layer.depth.value > 0;
  return layer.material.kind === 'porous' && (layer.thickness?.value ?? 0) > 0;
}

/** The assembly without everything that stands in one gap: its two leaves in contact. */
export function withoutGap(assembly: readonly AssemblyLayer[], gap: readonly number[]): AssemblyLayer[] {
  return assembly.filter((_, index) => !gap.includes(index));
}

/**
 * The assembly with `extra` metres more in one gap: its air layer, else its frame, else its fill takes them up.
 * A frame keeps its fill, and the added depth is air. Channels and clips keep theirs: they come in one depth.
 */
export function withDeeperGap(
  assembly: readonly AssemblyLayer[],
  gap: readonly number[],
  extra: number,
): AssemblyLayer[] {
  const kinds = ['air', 'frame', 'material'] as const;
  const free = gap.filter((index) => !holdsBoard(assembly[index]));
  const kind = kinds.find((candidate) => free.some((index) => assembly[index]?.kind === candidate));
  const target = free.find((index) => assembly[index]?.kind === kind);
  return assembly.map((layer, index) => {
    if (index !== target) return layer;
    if (layer.kind === 'frame') return { ...layer, depth: { ...layer.depth, value: layer.depth.value + extra } };
    if (layer.kind === 'air')
      return { ...layer, thickness: { ...layer.thickness, value: layer.thickness.value + extra } };
    const thickness = layer.thickness;
    return thickness === undefined ? layer : { ...layer, thickness: { ...thickness, value: thickness.value + extra } };
  });
}

function holdsBoard(layer: AssemblyLayer | undefined): boolean {
  return layer?.kind === 'air' && layer.fixings !== undefined;
}

/** The assembly with the air layers of one gap filled with generic fibre. */
export function withFibre(assembly: readonly AssemblyLayer[], gap: readonly number[]): AssemblyLayer[] {
  return assembly.map((layer, index) => {
    if (layer.kind !== 'air' || holdsBoard(layer) || !gap.includes(index)) return layer;
    return { ...fibreLayer(layer.thickness.value, layer.range), thickness: layer.thickness };
  });
}
