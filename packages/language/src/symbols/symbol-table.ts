import type { SourceRange } from '../model/sourced.js';
import type { SymbolKind } from '../vocabulary/shape.js';

/** One declared name and every place that refers to it. */
export interface SymbolEntry {
  readonly kind: SymbolKind;
  readonly name: string;
  readonly title?: string;
  readonly nameRange: SourceRange;
  readonly range: SourceRange;
  /** Name of the booth or variant it stands in. */
  readonly container?: string;
  /** Without the declaration itself. */
  readonly references: readonly SourceRange[];
  readonly fromCatalogue: boolean;
}

export interface SymbolTable {
  readonly symbols: readonly SymbolEntry[];
}

export interface SymbolHit {
  readonly symbol: SymbolEntry;
  readonly role: 'declaration' | 'reference';
  readonly range: SourceRange;
}
