import { escapeMarkdown, surfaceMassText, thicknessText } from '@boothwright/presentation';
import type { View } from '../view.js';
import { ifStale } from './if-stale.js';

/** The layer on whose line a place is: what it weighs there and which model speaks for it. */
export function layerSection(view: View, offset: number): string | undefined {
  for (const [name, assembly] of Object.entries(view.results?.assemblies ?? {})) {
    const layer = assembly.layers.find(
      ({ range }) => range.file === view.file && range.from <= offset && offset <= range.to,
    );
    if (layer === undefined) continue;
    const facts = [
      `**${escapeMarkdown(layer.text)}** in ${escapeMarkdown(name)}`,
      thicknessText(layer.thicknessM),
      surfaceMassText(layer.surfaceMassKgPerM2),
      `model: ${escapeMarkdown(layer.model)}`,
    ].join(' · ');
    return ifStale(view, facts, view.assembliesPending);
  }
  return undefined;
}
