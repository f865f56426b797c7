import type { DimensionName } from '../units/dimension.js';
import type { BlockName, Fact, SymbolKind } from '../vocabulary/shape.js';

/** What may stand at a place in the text. */
export type Expectation =
  /** The start of a line in a block. */
  | { readonly kind: 'fact'; readonly facts: readonly Fact[] }
  /** A layer line: the name of a material. */
  | { readonly kind: 'layer' }
  | { readonly kind: 'reference'; readonly to: readonly SymbolKind[] }
  | { readonly kind: 'quantity'; readonly dimension: DimensionName | 'any' | 'amount' }
  /** A number stands before the place. */
  | { readonly kind: 'unit'; readonly dimension: DimensionName | 'any' | 'amount' }
  | { readonly kind: 'clock' }
  | { readonly kind: 'choice'; readonly options: readonly string[] }
  | { readonly kind: 'word'; readonly word: string }
  | { readonly kind: 'face' }
  | { readonly kind: 'new-name'; readonly declares: SymbolKind }
  | { readonly kind: 'text' }
  /** Left side of an override in a variant. */
  | { readonly kind: 'path'; readonly typed: readonly string[] }
  | { readonly kind: 'path-or-catalogue' };

export interface Context {
  /** Innermost block. */
  readonly block: BlockName;
  /** The fact whose line the place is on, once its keyword is typed. */
  readonly fact: Fact | undefined;
  readonly expects: readonly Expectation[];
  /** The half-typed word that a completion would replace; empty at the place itself when there is none. */
  readonly replace: { readonly from: number; readonly to: number };
  /** True inside a comment or a string, where nothing is proposed. */
  readonly quiet: boolean;
}
