import { symbolAt } from '@boothwright/language';
import type { Position, Range, TextEdit, WorkspaceEdit } from 'vscode-languageserver';
import { namePlaces } from './name-places.js';
import type { View } from './view.js';

const name = /^[a-z][a-z0-9]*(?:-[a-z0-9]+)*$/;

/** Says why a name cannot be changed, or cannot be changed to what was typed. */
export class RenameRefused extends Error {}

/** The stretch that a rename would replace; undefined when no name of the user's stands there. */
export function prepareRename(view: View, position: Position): Range | undefined {
  const hit = symbolAt(view.checked.symbols, view.file, view.lines.offsetAt(position));
  if (hit === undefined || hit.symbol.fromCatalogue) return undefined;
  return view.lines.rangeOf(hit.range);
}

/** Changes a name where it is declared and everywhere it is used; `others` are further specs of the workspace. */
export function rename(
  view: View,
  position: Position,
  newName: string,
  others: readonly View[] = [],
): WorkspaceEdit | undefined {
  const hit = symbolAt(view.checked.symbols, view.file, view.lines.offsetAt(position));
  if (hit === undefined) return undefined;
  if (hit.symbol.fromCatalogue) throw new RenameRefused(`\`${hit.symbol.name}\` belongs to the catalogue`);
  if (!name.test(newName)) {
    throw new RenameRefused(
      `A name is made of small letters, digits and hyphens, such as \`side-wall\`; found \`${newName}\``,
    );
  }
  const { declaration, references, known } = namePlaces(view, hit, others);
  for (const { view: spec, symbol } of known) {
    const taken = spec.checked.symbols.symbols.find(
      (other) =>
        other !== symbol &&
        other.name === newName &&
        other.kind === symbol.kind &&
        other.container === symbol.container,
    );
    if (taken === undefined) continue;
    const where = spec === view ? '' : ` in ${spec.file}`;
    throw new RenameRefused(`There is ${article(symbol.kind)} ${symbol.kind} called \`${newName}\` already${where}`);
  }
  const changes: Record<string, TextEdit[]> = {};
  for (const location of [...(declaration === undefined ? [] : [declaration]), ...references]) {
    changes[location.uri] ??= [];
    changes[location.uri]!.push({ range: location.range, newText: newName });
  }
  return { changes };
}

const article = (kind: string): string => (/^[aeio]/.test(kind) ? 'an' : 'a');
