import type { TextChange } from './text-change.js';

/** A change that may mend a problem; whether it does is tried before it is offered. */
export interface Candidate {
  readonly title: string;
  readonly changes: readonly TextChange[];
  /** It leaves a place that only the writer can fill in, so the text is not yet sound afterwards. */
  readonly asks?: true;
  /** One of several ways out, of which none is to be taken without a look, however few are left. */
  readonly oneOfSeveral?: true;
}
