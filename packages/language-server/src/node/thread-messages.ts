import type { BaseResult, ResultDocument } from '@boothwright/assessment';
import type { BoothSpec } from '@boothwright/language';

/** What the server asks of the thread that works numbers out. */
export interface Question {
  readonly id: number;
  readonly spec: BoothSpec;
  /** Shared by both threads; not 0 once the answer is not wanted any more. */
  readonly ended: Int32Array;
}

/** What the thread says: twice in between, once at the end. */
export type Answer = { readonly id: number } & (
  | { readonly results: ResultDocument }
  | { readonly assemblies: ResultDocument['assemblies'] }
  | { readonly base: BaseResult }
  | { readonly error: string }
);
