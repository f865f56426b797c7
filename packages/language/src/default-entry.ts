import type { Evidence } from './model/sourced.js';

export interface DefaultEntry {
  readonly name: string;
  /** In the unit of the checked spec. */
  readonly value: number | string;
  /** As a user would write it. */
  readonly text: string;
  readonly evidence: Evidence;
  readonly source: string;
}
