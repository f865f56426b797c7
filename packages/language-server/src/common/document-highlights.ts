import { symbolAt } from '@boothwright/language';
import { type DocumentHighlight, DocumentHighlightKind, type Position } from 'vscode-languageserver';
import type { View } from './view.js';

/** The places in this text that name what is named at a position: its declaration as a write, its uses as reads. */
export function documentHighlights(view: View, position: Position): DocumentHighlight[] {
  const hit = symbolAt(view.checked.symbols, view.file, view.lines.offsetAt(position));
  if (hit === undefined) return [];
  const { nameRange, references } = hit.symbol;
  return [nameRange, ...references]
    .filter(({ file }) => file === view.file)
    .map((place) => ({
      range: view.lines.rangeOf(place),
      kind: place === nameRange ? DocumentHighlightKind.Write : DocumentHighlightKind.Read,
    }));
}
