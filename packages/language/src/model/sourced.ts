/** A stretch of text in one file; offsets count UTF-16 units, `to` is exclusive. */
export interface SourceRange {
  readonly file: string;
  readonly from: number;
  readonly to: number;
}

/** How strongly a figure is backed; shown wherever the figure is shown. */
export type Evidence =
  | 'published'
  | 'measured'
  | 'data-sheet'
  | 'common-practice'
  | 'from-memory'
  | 'stated'
  | 'derived';

/** Where a value came from. Every value of a checked spec has exactly one origin. */
export type Origin =
  /** Written in the spec; a material's figure may say where the user has it from. */
  | { readonly kind: 'given'; readonly evidence?: Evidence; readonly source?: string }
  /** The user said nothing; `name` is the named default of `defaults.ts`. */
  | { readonly kind: 'default'; readonly name: string; readonly evidence: Evidence; readonly source: string }
  /** Read from the shipped catalogue. */
  | { readonly kind: 'catalogue'; readonly evidence: Evidence; readonly source: string };

/** A value in SI units with its place in the text and its origin. */
export interface Sourced<T> {
  readonly value: T;
  readonly origin: Origin;
  /** Where it stands in the text; for a default, the header of the block that lacks it. */
  readonly range: SourceRange;
  /** What the user typed, e.g. `2-1/2 in`; absent for defaults. */
  readonly text?: string;
  /** Half-width of the stated 90 % range, in the unit of `value`; absent when no tolerance was given. */
  readonly tolerance?: number;
}

export interface Named {
  readonly name: string;
  readonly title?: string;
  /** The name where it is declared. */
  readonly nameRange: SourceRange;
  /** The whole declaration. */
  readonly range: SourceRange;
}
