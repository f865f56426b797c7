/** What the language server is asked beyond the protocol; its side is `client-requests.ts` in the server's sources. */

export interface Question {
  readonly name: string;
  readonly asks: string;
  readonly example: string;
  readonly choices?: readonly { readonly value: string; readonly says: string }[];
  readonly free?: boolean;
  readonly when?: { readonly name: string; readonly is: readonly string[] };
}

export type Answers = Record<string, string>;

export type AnswerCheck =
  | { readonly kind: 'empty' }
  | { readonly kind: 'good'; readonly answer: string }
  | { readonly kind: 'bad'; readonly message: string };

export interface FirstSpec {
  readonly text: string;
  readonly refused: readonly { readonly name: string; readonly answer: string; readonly message: string }[];
}

export interface Headline {
  readonly booth: string;
  readonly text: string;
  readonly missed: readonly string[];
  readonly state: 'fresh' | 'pending' | 'stale';
}
