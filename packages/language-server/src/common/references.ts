import { symbolAt } from '@boothwright/language';
import type { Location, Position } from 'vscode-languageserver';
import type { View } from './view.js';

/** Every place that names what is named at a position. */
export function references(view: View, position: Position, withDeclaration: boolean): Location[] {
  const hit = symbolAt(view.checked.symbols, view.file, view.lines.offsetAt(position));
  if (hit === undefined) return [];
  const places = withDeclaration ? [hit.symbol.nameRange, ...hit.symbol.references] : hit.symbol.references;
  return places.map((place) => view.locate(place)).filter((location) => location !== undefined);
}
