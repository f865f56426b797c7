import { symbolAt } from '@boothwright/language';
import type { Location, Position } from 'vscode-languageserver';
import { namePlaces } from './name-places.js';
import type { View } from './view.js';

/** Every place that names what is named at a position; `others` are further specs of the workspace. */
export function references(
  view: View,
  position: Position,
  withDeclaration: boolean,
  others: readonly View[] = [],
): Location[] {
  const hit = symbolAt(view.checked.symbols, view.file, view.lines.offsetAt(position));
  if (hit === undefined) return [];
  const places = namePlaces(view, hit, others);
  return withDeclaration && places.declaration !== undefined
    ? [places.declaration, ...places.references]
    : [...places.references];
}
