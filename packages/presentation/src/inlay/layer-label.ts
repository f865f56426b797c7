import type { AssemblyResult } from '@boothwright/assessment';
import { formatFigures } from '../numbers/format-number.js';

/** `6.5 kg/m²` behind a layer; undefined for a layer that weighs nothing. */
export function layerLabel(layer: AssemblyResult['layers'][number]): string | undefined {
  return layer.surfaceMassKgPerM2 > 0.05 ? `${formatFigures(layer.surfaceMassKgPerM2)} kg/m²` : undefined;
}
