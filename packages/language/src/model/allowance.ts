import type { Problem } from './problem.js';
import type { SourceRange } from './sourced.js';

/** `# allow ID: reason`, a comment that takes responsibility for what would be told at its line. */
export interface Allowance {
  readonly id: string;
  /** Never empty: a comment without a reason allows nothing. */
  readonly reason: string;
  /** The identifier in the comment. */
  readonly range: SourceRange;
  /** The line that it speaks of: its own, or the next one that says something. */
  readonly covers: SourceRange;
}

/** A problem that is not told because a comment allows it. */
export interface AllowedProblem {
  readonly problem: Problem;
  readonly allowance: Allowance;
}
