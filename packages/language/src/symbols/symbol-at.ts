import type { SymbolHit, SymbolTable } from './symbol-table.js';

/** The name at a place, whether declared or referred to there; the end of a name still counts as inside. */
export function symbolAt(table: SymbolTable, file: string, offset: number): SymbolHit | undefined {
  for (const symbol of table.symbols) {
    const place = symbol.nameRange;
    if (place.file === file && place.from <= offset && offset <= place.to)
      return { symbol, role: 'declaration', range: place };
    const range = symbol.references.find((r) => r.file === file && r.from <= offset && offset <= r.to);
    if (range) return { symbol, role: 'reference', range };
  }
  return undefined;
}
