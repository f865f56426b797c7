// What the live sheet is told by the language server; its side is `sheet/protocol.ts` in the server's sources. The page in
// the panel gets it as it is.

export interface SheetPlace {
  readonly uri: string;
  readonly line: number;
  readonly endLine: number;
}

export interface SheetFold {
  readonly id: string;
  readonly title: string;
  readonly summary: string;
  readonly version: string;
  readonly html?: string;
  readonly marks: readonly (SheetPlace | null)[];
}

export interface Sheet {
  readonly uri: string;
  readonly state: 'fresh' | 'pending' | 'stale' | 'partial' | 'empty';
  readonly booth: string | null;
  readonly title: string | null;
  readonly variant: string | null;
  readonly verdict: string;
  readonly facts: readonly {
    readonly label: string;
    readonly value: string;
    readonly ends: string;
    readonly place: SheetPlace | null;
  }[];
  readonly problems: readonly { readonly message: string; readonly place: SheetPlace | null }[];
  readonly moreProblems: number;
  readonly folds: readonly SheetFold[] | null;
}

export interface Cursor {
  readonly uri: string;
  readonly line: number;
}

/** What the panel tells its page. */
export type ToPage =
  | { readonly kind: 'sheet'; readonly sheet: Sheet; readonly file: string; readonly cursor: Cursor }
  | { readonly kind: 'cursor'; readonly cursor: Cursor }
  | { readonly kind: 'nothing'; readonly why: string };

/** What the page tells the panel. */
export type FromPage =
  /** It has just been loaded and shows nothing yet. */
  | { readonly kind: 'ready'; readonly width: number; readonly shut: readonly string[] }
  | { readonly kind: 'view'; readonly width: number; readonly shut: readonly string[] }
  | { readonly kind: 'go'; readonly place: SheetPlace }
  | { readonly kind: 'copy'; readonly text: string };

/** What the page keeps over a reload. */
export interface Kept {
  readonly uri?: string;
  readonly line?: number;
  readonly shut: readonly string[];
  readonly scroll: number;
}
