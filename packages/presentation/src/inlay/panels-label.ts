import type { BoothResult } from '@boothwright/assessment';
import { formatQuantity } from '../numbers/format-quantity.js';

/** `17 panels, the heaviest 59 kg`, and a leaf of a door that weighs more; undefined for a booth without panels. */
export function panelsLabel({ build, moving }: BoothResult): string | undefined {
  const heaviest = build.panels.find(({ number }) => number === build.heaviestPanel);
  if (heaviest === undefined) return undefined;
  const leaf = Math.max(...(moving?.cards ?? []).flatMap(({ panel, massKg }) => (panel === null ? [massKg] : [])));
  const heavier = leaf > heaviest.massKg ? `, a door leaf ${formatQuantity(leaf, 'kg')}` : '';
  return `${build.panels.length} panels, the heaviest ${formatQuantity(heaviest.massKg, 'kg')}${heavier}`;
}
