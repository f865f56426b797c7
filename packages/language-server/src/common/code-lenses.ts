import type { ComparisonDocument } from '@boothwright/assessment';
import { boothLens, sinceWords, variantLens } from '@boothwright/presentation';
import type { CodeLens } from 'vscode-languageserver';
import type { Settings } from './settings.js';
import type { View } from './view.js';

const lenses = { booth: boothLens, variant: variantLens };

/**
 * Above each booth and each variant what it comes to, in words; without numbers yet, nothing. In an editor that has a live
 * sheet a lens opens it there. With a comparison a second lens says what the booth gained and lost since the last commit.
 */
export function codeLenses(
  view: View,
  { codeLens }: Settings,
  hasSheet = false,
  comparison?: ComparisonDocument,
): CodeLens[] {
  const { results } = view;
  if (results === undefined) return [];
  return view.checked.symbols.symbols.flatMap((symbol) => {
    const { kind, name, nameRange } = symbol;
    if (nameRange.file !== view.file || (kind !== 'booth' && kind !== 'variant')) return [];
    const own = codeLens[kind === 'booth' ? 'booths' : 'variants'] ? lenses[kind](name, results) : undefined;
    const title = own !== undefined && view.stale ? `was ${own}` : own;
    const since =
      kind === 'booth' && codeLens.sinceCommit && comparison !== undefined ? sinceWords(comparison, name) : undefined;
    const range = view.lines.rangeOf(nameRange);
    return [title, since].flatMap((told) => {
      if (told === undefined) return [];
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
  });
}
