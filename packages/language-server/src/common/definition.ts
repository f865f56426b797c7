import { symbolAt } from '@boothwright/language';
import type { LocationLink, Position } from 'vscode-languageserver';
import type { View } from './view.js';

/** Where the name at a position is declared: in this file, in one that it uses, or in the catalogue. */
export function definition(view: View, position: Position): LocationLink[] {
  const hit = symbolAt(view.checked.symbols, view.file, view.lines.offsetAt(position));
  if (hit === undefined) return [];
  const whole = view.locate(hit.symbol.range);
  const name = view.locate(hit.symbol.nameRange);
  if (whole === undefined || name === undefined) return [];
  return [
    {
      originSelectionRange: view.lines.rangeOf(hit.range),
      targetUri: whole.uri,
      targetRange: whole.range,
      targetSelectionRange: name.range,
    },
  ];
}
