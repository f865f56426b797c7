import type { AssemblyLayer } from '@boothwright/language';
import { shownValue } from './shown-value.js';

/** A layer about as it is written: `gypsum-board 12.5 mm`, `frame 45 mm x 70 mm every 300 mm`. */
export function layerText(layer: AssemblyLayer): string {
  const m = (value: unknown) => shownValue(value, 'm');
  if (layer.kind === 'air') return `air ${m(layer.thickness)}`;
  if (layer.kind === 'frame') {
    const fill = layer.fill === undefined ? '' : ` with ${layerText(layer.fill)}`;
    return `frame ${m(layer.width)} x ${m(layer.depth)} every ${m(layer.spacing)}${fill}`;
  }
  const amount = layer.thickness === undefined ? shownValue(layer.surfaceMass, 'kg/m2') : m(layer.thickness);
  return `${layer.material.name} ${amount}`;
}
