import type { AssemblyLayer, MaterialLayer, Sourced } from '@boothwright/language';
import { decimals } from '../text/decimals.js';

/** One layer in the builder's words: `gypsum-board 12.5 mm`, `air 50 mm`, `frame 45 mm x 70 mm every 600 mm`. */
export function layerText(layer: AssemblyLayer): string {
  if (layer.kind === 'air') {
    const { fixings } = layer;
    const what = `${fixings?.kind ?? 'air'} ${length(layer.thickness)}`;
    return fixings === undefined ? what : `${what} every ${length(fixings.spacing)}`;
  }
  if (layer.kind === 'material') return materialText(layer);
  const hollow = layer.lumber.gauge === undefined ? '' : ` of ${layer.lumber.name}`;
  const frame = `frame ${length(layer.width)} x ${length(layer.depth)} every ${length(layer.spacing)}${hollow}`;
  return layer.fill === undefined ? frame : `${frame}, filled with ${materialText(layer.fill)}`;
}

function materialText({ material, thickness, surfaceMass }: MaterialLayer): string {
  return thickness === undefined
    ? `${material.name} ${decimals(surfaceMass.value, 1)} kg/m2`
    : `${material.name} ${length(thickness)}`;
}

function length(sourced: Sourced<number>): string {
  return `${Number((sourced.value * 1000).toFixed(2))} mm`;
}

/** Which model speaks for the layer, for the table of layers. */
export function layerModel(layer: AssemblyLayer): string {
  if (layer.kind === 'air') return layer.fixings === undefined ? 'air' : 'air with springs across it';
  if (layer.kind === 'frame') {
    const { gauge, studStiffness } = layer.lumber;
    const line = gauge === undefined && studStiffness === undefined ? 'rigid' : 'yielding';
    return `${line} line connection every stud, with the fill and the remaining air between`;
  }
  const { material, thickness } = layer;
  if (thickness?.value === 0) return 'absent';
  switch (material.kind) {
    case 'panel':
      return material.modulus === undefined ? 'limp mass' : 'plate with bending stiffness';
    case 'porous':
      return material.resistivity === undefined ? 'air' : 'porous with a limp frame';
    case 'cloth':
      return 'thin resistive sheet';
    default:
      return 'limp mass';
  }
}
