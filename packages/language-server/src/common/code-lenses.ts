import { boothLens, variantLens } from '@boothwright/presentation';
import type { CodeLens } from 'vscode-languageserver';
import type { Settings } from './settings.js';
import type { View } from './view.js';

const lenses = { booth: boothLens, variant: variantLens };

/**
 * Above each booth and each variant what it comes to, in words; without numbers yet, nothing. In an editor that has a live
 * sheet a lens opens it there.
 */
export function codeLenses(view: View, { codeLens }: Settings, hasSheet = false): CodeLens[] {
  const { results } = view;
  if (results === undefined) return [];
  return view.checked.symbols.symbols.flatMap((symbol) => {
    const { kind, name, nameRange } = symbol;
    if (nameRange.file !== view.file || (kind !== 'booth' && kind !== 'variant')) return [];
    if (!codeLens[kind === 'booth' ? 'booths' : 'variants']) return [];
    const title = lenses[kind](name, results);
    if (title === undefined) return [];
    const range = view.lines.rangeOf(nameRange);
    const told = view.stale ? `was ${title}` : title;
    // An editor without a sheet shows a lens without a command as text.
    const command = hasSheet
      ? {
          title: told,
          command: 'boothwright.openSheet',
          arguments: [view.uri, range.start],
          tooltip: 'Open the live sheet',
        }
      : { title: told, command: '' };
    return [{ range, command }];
  });
}
