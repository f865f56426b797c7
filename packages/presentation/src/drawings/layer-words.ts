import type { AssemblyLayer, MaterialKind, MaterialLayer } from '@boothwright/language';
import { formatFigures } from '../numbers/format-number.js';
import { type DisplayUnits, lengthText } from '../numbers/length-text.js';
import type { Filling } from './hatch.js';

/** m; a layer known by its mass alone counts nothing. */
export function layerThickness(layer: AssemblyLayer): number {
  if (layer.kind === 'air') return layer.thickness.value;
  if (layer.kind === 'frame') return layer.depth.value;
  return layer.thickness?.value ?? layer.material.thickness?.value ?? 0;
}

export function layersThickness(layers: readonly AssemblyLayer[]): number {
  return layers.reduce((sum, layer) => sum + layerThickness(layer), 0);
}

const fillings: Readonly<Record<MaterialKind, Filling>> = {
  panel: 'board',
  limp: 'sheet',
  porous: 'porous',
  cloth: 'cloth',
  covering: 'covering',
  lumber: 'board',
};

export function fillingOf(layer: MaterialLayer): Filling {
  return fillings[layer.material.kind];
}

const kindNames: Readonly<Record<MaterialKind, string>> = {
  panel: 'board',
  limp: 'limp sheet',
  porous: 'porous',
  cloth: 'cloth',
  covering: 'covering',
  lumber: 'lumber',
};

export function layerKind(layer: AssemblyLayer): string {
  if (layer.kind === 'air') return layer.fixings === undefined ? 'air' : `air, ${layer.fixings.kind}`;
  return layer.kind === 'frame' ? 'frame' : kindNames[layer.material.kind];
}

/** `softwood-plywood 12 mm`, `studs 45 mm × 70 mm every 300 mm, softwood; between them mineral-wool-40 70 mm`. */
export function layerText(layer: AssemblyLayer, units: DisplayUnits): string {
  const length = (metres: number) => lengthText(metres, units);
  if (layer.kind === 'air') {
    const held = layer.fixings === undefined ? '' : ` with resilient ${layer.fixings.kind}`;
    return `air ${length(layer.thickness.value)}${held}`;
  }
  if (layer.kind === 'frame') {
    const studs = `studs ${length(layer.width.value)} × ${length(layer.depth.value)} every ${length(layer.spacing.value)}, ${layer.lumber.name}`;
    return layer.fill === undefined
      ? `${studs}; air between them`
      : `${studs}; between them ${layerText(layer.fill, units)}`;
  }
  const thickness = layerThickness(layer);
  const size = thickness > 0 ? length(thickness) : `${formatFigures(layer.surfaceMass.value)} kg/m²`;
  return `${layer.material.name} ${size}`;
}
