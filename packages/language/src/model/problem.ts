import type { SourceRange } from './sourced.js';

export type Severity = 'error' | 'warning' | 'hint';

/**
 * One complaint about the text. `message` says what was found and what was expected, in the user's words, with no
 * full stop at its end; `hint` says what to do.
 */
export interface Problem {
  /** Stable, kebab-case, e.g. `unit-of-wrong-dimension`. */
  readonly id: string;
  readonly severity: Severity;
  readonly message: string;
  readonly range: SourceRange;
  readonly hint?: string;
  /** Texts of which each can stand in place of the marked one; several where only the writer knows which is meant. */
  readonly instead?: readonly string[];
  /** Keywords of the facts that the marked block lacks. */
  readonly lacks?: readonly string[];
  /** `deprecated`: it still works and should be written otherwise; editors strike it through. */
  readonly tags?: readonly 'deprecated'[];
  readonly related?: readonly { readonly range: SourceRange; readonly message: string }[];
}
