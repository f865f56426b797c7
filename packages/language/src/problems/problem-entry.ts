import type { Severity } from '../model/problem.js';

/** What an identifier of a problem stands for, whatever the words of the message. */
export interface ProblemEntry {
  /** As it is told unless the settings say otherwise. */
  readonly severity: Severity;
  readonly means: string;
  readonly remedy: string;
}
