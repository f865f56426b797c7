import type { AssemblyLayer, FrameLayer } from '@boothwright/language';

/**
 * Weight of one layer per wall area, kg/m2; a frame counts its studs and its fill.
 *
 * Studs: width x depth / spacing x density of the lumber. Plates at the top and bottom of a panel are left out.
 */
export function layerMass(layer: AssemblyLayer): number {
  if (layer.kind === 'air') return 0;
  if (layer.kind === 'material') return layer.surfaceMass.value;
  return studMass(layer) + (layer.fill?.surfaceMass.value ?? 0);
}

function studMass(frame: FrameLayer): number {
  const density = frame.lumber.density?.value ?? 0;
  return ((frame.width.value * frame.depth.value) / frame.spacing.value) * density;
}

/** Sum over all layers, kg/m2. */
export function assemblyMass(layers: readonly AssemblyLayer[]): number {
  return layers.reduce((sum, layer) => sum + layerMass(layer), 0);
}
