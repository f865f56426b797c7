import type { AssemblyLayer } from '@boothwright/language';

/** Thickness of one layer, m; a layer known by its mass alone counts nothing. */
export function layerThickness(layer: AssemblyLayer): number {
  if (layer.kind === 'air') return layer.thickness.value;
  if (layer.kind === 'frame') return layer.depth.value;
  return layer.thickness?.value ?? layer.material.thickness?.value ?? 0;
}

export function assemblyThickness(layers: readonly AssemblyLayer[]): number {
  return layers.reduce((sum, layer) => sum + layerThickness(layer), 0);
}
