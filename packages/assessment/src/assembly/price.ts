import type { AssemblyLayer, Material } from '@boothwright/language';
import { layerThickness } from './thickness.js';

interface Amount {
  readonly amount: number;
  readonly currency: string;
}

/** Price of a square metre; null unless every layer but air has a price that can be turned into one, in one currency. */
export function pricePerArea(assembly: readonly AssemblyLayer[]): Amount | null {
  const parts = assembly.flatMap(layerPrices);
  if (parts.length === 0) return null;
  let amount = 0;
  const currency = parts[0]?.currency ?? '';
  for (const part of parts) {
    if (part === null || part.currency !== currency) return null;
    amount += part.amount;
  }
  return { amount, currency };
}

function layerPrices(layer: AssemblyLayer): (Amount | null)[] {
  if (layer.kind === 'air' || layerThicknessIsNone(layer)) return [];
  if (layer.kind === 'material') return [priced(layer.material, layerThickness(layer), layer.surfaceMass.value, 0)];
  const { width, depth, spacing, lumber, fill } = layer;
  const section = (width.value * depth.value) / spacing.value;
  const studs = priced(lumber, section, section * (lumber.density?.value ?? 0), 1 / spacing.value, true);
  return fill === undefined
    ? [studs]
    : [studs, priced(fill.material, fill.thickness?.value ?? 0, fill.surfaceMass.value, 0)];
}

function layerThicknessIsNone(layer: AssemblyLayer): boolean {
  return layer.kind === 'material' && layer.thickness?.value === 0;
}

/** `metresPerArea` is the run of a stick per wall area. */
function priced(
  material: Material,
  volumePerArea: number,
  massPerArea: number,
  metresPerArea: number,
  stick = false,
): Amount | null {
  const price = material.price?.value;
  if (price === undefined) return null;
  const { amount, currency } = price;
  switch (price.per) {
    case 'm2':
      return stick ? null : { amount, currency };
    case 'm3':
      return { amount: amount * volumePerArea, currency };
    case 'kg':
      return { amount: amount * massPerArea, currency };
    case 'm':
      return stick ? { amount: amount * metresPerArea, currency } : null;
    default:
      return null;
  }
}
