import type { ResultDocument } from './result/result-document.js';

/** What a spec comes to without its variants, and before it is known which of its comments meant anything in one of them. */
export type BaseResult = Omit<ResultDocument, 'variants' | 'allowances'>;

/** What looks on while a spec is assessed. */
export interface Watch {
  /** Gets the build-ups of the spec itself, which are there before its booths. */
  readonly assemblies?: (found: ResultDocument['assemblies']) => void;
  /** Gets the whole of the spec itself, which is there before its variants; not called for a spec without any. */
  readonly base?: (found: BaseResult) => void;
  /** Called at every step; what it throws ends the assessment, and what was remembered until then stays good. */
  readonly step?: (() => void) | undefined;
}
