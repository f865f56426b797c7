import type { AssemblyResult } from '@boothwright/assessment';
import { surfaceMassText } from '../numbers/trade-units.js';

/** `6.5 kg/m²` behind a layer; undefined for a layer that weighs nothing. */
export function layerLabel(layer: AssemblyResult['layers'][number]): string | undefined {
  return layer.surfaceMassKgPerM2 > 0.05 ? surfaceMassText(layer.surfaceMassKgPerM2) : undefined;
}
