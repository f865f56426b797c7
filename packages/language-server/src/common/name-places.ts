import { CATALOGUE_FILE, type SourceRange, type SymbolEntry, type SymbolHit } from '@boothwright/language';
import type { Location } from 'vscode-languageserver';
import { decoded, sameUri } from './file-place.js';
import type { View } from './view.js';

/** Where one name stands in a whole workspace, and every spec that knows it. */
export interface NamePlaces {
  readonly declaration: Location | undefined;
  readonly references: readonly Location[];
  /** What each spec that reads the declaration knows of it. */
  readonly known: readonly { readonly view: View; readonly symbol: SymbolEntry }[];
}

/**
 * A name is declared once and used in this spec, and in every other one that reads the file of the declaration. Those
 * are given as views; a place that several of them tell of is counted once.
 */
export function namePlaces(view: View, hit: SymbolHit, others: readonly View[]): NamePlaces {
  const known = [{ view, symbol: hit.symbol }];
  for (const other of others) {
    if (sameUri(other.uri, view.uri)) continue;
    const symbol = other.checked.symbols.symbols.find(
      (each) =>
        each.kind === hit.symbol.kind &&
        each.name === hit.symbol.name &&
        each.nameRange.from === hit.symbol.nameRange.from &&
        isSameFile(other, each.nameRange, view, hit.symbol.nameRange),
    );
    if (symbol !== undefined) known.push({ view: other, symbol });
  }
  const references = new Map<string, Location>();
  for (const each of known) {
    for (const place of each.symbol.references) {
      const location = each.view.locate(place);
      if (location === undefined) continue;
      const { start } = location.range;
      const key = `${decoded(location.uri)}:${start.line}:${start.character}`;
      if (!references.has(key)) references.set(key, location);
    }
  }
  return { declaration: view.locate(hit.symbol.nameRange), references: [...references.values()], known };
}

function isSameFile(a: View, inA: SourceRange, b: View, inB: SourceRange): boolean {
  if (inA.file === CATALOGUE_FILE || inB.file === CATALOGUE_FILE) return inA.file === inB.file;
  const [first, second] = [a.locate(inA), b.locate(inB)];
  return first !== undefined && second !== undefined && sameUri(first.uri, second.uri);
}
