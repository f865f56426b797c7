import { nameOf, titleOf } from '../check/block-reader.js';
import { isCatalogue, type ReferenceLog, referenceKey, wholeOf } from '../check/context.js';
import type { Statement } from '../syntax/tree.js';
import type { SymbolEntry } from './symbol-table.js';

/** Every declared name in order of place, with the references that reading the spec and its variants found. */
export function collectSymbols(statements: readonly Statement[], references: ReferenceLog): readonly SymbolEntry[] {
  const symbols: SymbolEntry[] = [];
  const seen = new Set<string>();
  const known = new Set(
    statements.flatMap((statement) => {
      const name = statement.fact?.declares && nameOf(statement)?.name;
      return name ? [referenceKey(statement.fact!.declares!, name)] : [];
    }),
  );
  const add = (statement: Statement, container: string | undefined): void => {
    const kind = statement.fact?.declares;
    const named = nameOf(statement);
    if (kind && named) {
      const key = referenceKey(kind, named.name, container);
      const found = seen.has(key) ? [] : [...(references.get(key)?.values() ?? [])];
      seen.add(key);
      symbols.push({
        kind,
        ...named,
        ...titleOf(statement),
        range: wholeOf(statement),
        ...(container === undefined ? {} : { container }),
        references: found.sort((a, b) => (a.file < b.file ? -1 : a.file > b.file ? 1 : a.from - b.from)),
        fromCatalogue: isCatalogue(statement.file),
      });
    }
    // What a variant declares anew is a reference to the name it replaces; new names in a variant are its own.
    const inner = kind === 'booth' ? named?.name : kind === 'variant' ? undefined : container;
    for (const child of statement.block?.statements ?? []) {
      if (kind === 'variant') {
        const childName = nameOf(child)?.name;
        if (child.fact?.declares && childName && known.has(referenceKey(child.fact.declares, childName))) continue;
      }
      add(child, inner);
    }
  };
  for (const statement of statements) add(statement, undefined);
  return symbols;
}
