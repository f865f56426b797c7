import { boothLens, variantLens } from '@boothwright/presentation';
import type { CodeLens } from 'vscode-languageserver';
import type { Settings } from './settings.js';
import type { View } from './view.js';

const lenses = { booth: boothLens, variant: variantLens };

/** Above each booth and each variant what it comes to, in words; without numbers yet, nothing. */
export function codeLenses(view: View, { codeLens }: Settings): CodeLens[] {
  const { results } = view;
  if (results === undefined) return [];
  return view.checked.symbols.symbols.flatMap((symbol) => {
    const { kind, name, nameRange } = symbol;
    if (nameRange.file !== view.file || (kind !== 'booth' && kind !== 'variant')) return [];
    if (!codeLens[kind === 'booth' ? 'booths' : 'variants']) return [];
    const title = lenses[kind](name, results);
    if (title === undefined) return [];
    // It tells and does nothing: an editor shows a lens without a command as text.
    return [
      {
        range: view.lines.rangeOf(nameRange),
        command: { title: view.stale ? `was ${title}` : title, command: '' },
      },
    ];
  });
}
