import type { BlockName, Fact } from '../vocabulary/shape.js';
import type { Token } from './token.js';

/** A stretch of the parsed text; the file is that of the tree's root. */
export interface Span {
  readonly from: number;
  readonly to: number;
}

// ---------------------------------------------------------------- expressions

export interface UnitNode extends Span {
  /** As typed, blanks removed. */
  readonly text: string;
}

export interface LiteralNode extends Span {
  readonly kind: 'literal';
  readonly value: number;
  /** Undefined for a bare number. */
  readonly unit: UnitNode | undefined;
  /** The inches of `6 ft 2 in`. */
  readonly rest: { readonly value: number; readonly unit: UnitNode } | undefined;
  /** `± 10 %` or `± 2 mm`. */
  readonly tolerance:
    | { readonly value: number; readonly unit: UnitNode | undefined; readonly from: number; readonly to: number }
    | undefined;
}

export interface NameNode extends Span {
  readonly kind: 'name';
  readonly name: string;
}

export interface BinaryNode extends Span {
  readonly kind: 'binary';
  readonly operator: '+' | '-' | '*' | '/';
  readonly operatorSpan: Span;
  readonly left: Expression;
  readonly right: Expression;
}

export interface NegateNode extends Span {
  readonly kind: 'negate';
  readonly operand: Expression;
}

/** A time of day that there is, from `0:00` to `24:00`. */
export interface ClockNode extends Span {
  readonly text: string;
  /** s after midnight */
  readonly seconds: number;
}

/** Stands where a value should be; the parser has complained about it already. */
export interface MissingNode extends Span {
  readonly kind: 'missing';
}

export type Expression = LiteralNode | NameNode | BinaryNode | NegateNode | MissingNode;

// ---------------------------------------------------------------- slots

/** A part of a statement. `file` is set where a variant put the part into a statement of another file. */
export type Slot = { readonly file?: string } & (
  | (Span & { readonly kind: 'expression'; readonly expression: Expression })
  /** A word: a choice, a reference, a declared name. */
  | (Span & { readonly kind: 'word'; readonly word: string })
  | (Span & { readonly kind: 'string'; readonly value: string })
  /** Present literal word, such as `within`. */
  | (Span & { readonly kind: 'flag'; readonly word: string })
  | (Span & { readonly kind: 'words'; readonly words: readonly (Span & { readonly word: string })[] })
  | (Span & {
      readonly kind: 'bands';
      readonly grid: 'octave' | 'third';
      readonly bands: readonly (Span & { readonly frequency: Expression; readonly value: Expression })[];
    })
  | (Span & {
      readonly kind: 'pairs';
      readonly pairs: readonly (Span & { readonly first: Expression; readonly second: Expression })[];
    })
  | (Span & {
      readonly kind: 'price';
      readonly amount: Expression;
      readonly per: (Span & { readonly word: string }) | undefined;
    })
  | (Span & { readonly kind: 'clock'; readonly time: ClockNode })
  | (Span & {
      readonly kind: 'hours';
      readonly spans: readonly (Span & { readonly begins: ClockNode; readonly ends: ClockNode })[];
    })
  | (Span & { readonly kind: 'nominal'; readonly text: string })
  /** The untouched right side of an override; what it must be depends on what it changes. */
  | (Span & { readonly kind: 'tokens'; readonly tokens: readonly Token[] })
);

/** `from published "…"` behind a fact. */
export interface SourceClause extends Span {
  readonly evidence: string | undefined;
  readonly text: string;
}

// ---------------------------------------------------------------- statements

export interface Statement extends Span {
  readonly kind: 'statement';
  readonly file: string;
  /** Undefined when the first word is no fact of this block. */
  readonly fact: Fact | undefined;
  /** The first word, or the two words of a two-word fact. */
  readonly keyword: Span & { readonly word: string };
  readonly slots: ReadonlyMap<string, Slot>;
  readonly clause: SourceClause | undefined;
  readonly block: BlockNode | undefined;
  /** False when the parser complained about this line; what was understood is still in the slots. */
  readonly complete: boolean;
  /** End of the header: everything before the block. */
  readonly headerTo: number;
}

export interface BlockNode extends Span {
  readonly name: BlockName;
  readonly statements: readonly Statement[];
  readonly closed: boolean;
}

export interface FileNode extends Span {
  readonly kind: 'file';
  readonly file: string;
  readonly statements: readonly Statement[];
}
