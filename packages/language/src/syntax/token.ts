/**
 * `newline` also stands for the end of the text. `nominal` is trade lumber written as one word, `2x4`;
 * `clock` is a time of day, `06:00`.
 * `other` is any character the language has no use for.
 */
export type TokenKind = 'word' | 'number' | 'clock' | 'nominal' | 'string' | 'symbol' | 'comment' | 'newline' | 'other';

export interface Token {
  readonly kind: TokenKind;
  readonly from: number;
  /** Exclusive. */
  readonly to: number;
  /** The exact characters, without the line break for `newline`. */
  readonly text: string;
  /** A blank or a line start stands before it. */
  readonly spaced: boolean;
}
