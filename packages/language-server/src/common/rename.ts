import { symbolAt } from '@boothwright/language';
import type { Position, Range, TextEdit, WorkspaceEdit } from 'vscode-languageserver';
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

/** Changes a name where it is declared and everywhere it is used, in all files that are part of this spec. */
export function rename(view: View, position: Position, newName: string): WorkspaceEdit | undefined {
  const hit = symbolAt(view.checked.symbols, view.file, view.lines.offsetAt(position));
  if (hit === undefined) return undefined;
  if (hit.symbol.fromCatalogue) throw new RenameRefused(`\`${hit.symbol.name}\` belongs to the catalogue`);
  if (!name.test(newName)) {
    throw new RenameRefused(
      `A name is made of small letters, digits and hyphens, such as \`side-wall\`; found \`${newName}\``,
    );
  }
  const taken = view.checked.symbols.symbols.some(
    (other) =>
      other !== hit.symbol &&
      other.name === newName &&
      other.kind === hit.symbol.kind &&
      other.container === hit.symbol.container,
  );
  if (taken) throw new RenameRefused(`There is a ${hit.symbol.kind} called \`${newName}\` already`);
  const changes: Record<string, TextEdit[]> = {};
  for (const place of [hit.symbol.nameRange, ...hit.symbol.references]) {
    const location = view.locate(place);
    if (location === undefined) continue;
    changes[location.uri] ??= [];
    changes[location.uri]!.push({ range: location.range, newText: newName });
  }
  return { changes };
}
