import type { Position } from 'vscode-languageserver';

/** What an editor asks for to draw or redraw the live sheet; its side is `sheet-protocol.ts` in the extension's sources. */
export interface SheetAsked {
  readonly uri: string;
  readonly position: Position;
  /** Of the column that the pictures are drawn for, px. */
  readonly width: number;
  /** Folds that are shut: of them only the title and the summary are wanted. */
  readonly shut: readonly string[];
  /** Versions of the folds that the editor already shows. */
  readonly known: Readonly<Record<string, string>>;
}

export interface SheetPlace {
  readonly uri: string;
  /** Lines from the first to the last, counted from zero. */
  readonly line: number;
  readonly endLine: number;
}

export interface SheetFold {
  readonly id: string;
  readonly title: string;
  readonly summary: string;
  readonly version: string;
  /** Left out where the editor has this version already, and for a shut fold. */
  readonly html?: string;
  readonly marks: readonly (SheetPlace | null)[];
}

export interface Sheet {
  readonly uri: string;
  /**
   * `pending`: the numbers of the present text are being worked out; `stale`: the text is broken and the numbers are those
   * of an earlier one; `partial`: it is broken and what could be read is assessed; `empty`: there is nothing to tell.
   */
  readonly state: 'fresh' | 'pending' | 'stale' | 'partial' | 'empty';
  /** Name of the booth, what it is called, and the variant in whose block the cursor stands. */
  readonly booth: string | null;
  readonly title: string | null;
  readonly variant: string | null;
  /** `✗ 2 of 8 requirements missed`. */
  readonly verdict: string;
  readonly facts: readonly {
    readonly label: string;
    readonly value: string;
    readonly ends: string;
    readonly place: SheetPlace | null;
  }[];
  /** Errors of the text, and what cannot be told because of them. */
  readonly problems: readonly { readonly message: string; readonly place: SheetPlace | null }[];
  readonly moreProblems: number;
  /** While they are worked out only those that are new; null where the editor goes on showing what it has. */
  readonly folds: readonly SheetFold[] | null;
}
