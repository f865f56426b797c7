import { checkLayers, type Layer } from './layer.js';

/**
 * Mass per area of a stack, kg/m2: plates, sheets, cloths and porous layers with a known density; the air counts nothing.
 *
 * Errors: ArgumentError for a layer that cannot exist.
 *
 * @example
 * ```ts
 * import { surfaceMass } from '@boothwright/acoustics/layered';
 *
 * surfaceMass([{ kind: 'limp-sheet', surfaceMass: 4 }, { kind: 'air-gap', thickness: 0.05 }]); // 4
 * ```
 */
export function surfaceMass(layers: readonly Layer[]): number {
  checkLayers(layers);
  return layers.reduce((sum, layer) => sum + layerMass(layer), 0);
}

function layerMass(layer: Layer): number {
  switch (layer.kind) {
    case 'plate':
      return layer.thickness * layer.density;
    case 'limp-sheet':
      return layer.surfaceMass;
    case 'porous':
      return layer.thickness * (layer.density ?? 0);
    case 'screen':
      return layer.surfaceMass ?? 0;
    case 'air-gap':
      return 0;
  }
}
