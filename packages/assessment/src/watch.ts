import type { ResultDocument } from './result/result-document.js';

/** What looks on while a spec is assessed. */
export interface Watch {
  /** Gets the build-ups of the spec itself, which are there before its booths. */
  readonly assemblies?: (found: ResultDocument['assemblies']) => void;
  /** Called at every step; what it throws ends the assessment, and what was remembered until then stays good. */
  readonly step?: (() => void) | undefined;
}
