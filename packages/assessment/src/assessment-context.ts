import type { Air } from '@boothwright/acoustics';
import type { BoothSpec } from '@boothwright/language';
import type { AssessedBooth } from './booth/assess-booth.js';
import type { Memo } from './memo/memo.js';
import type { AssemblyResult, RequirementResult } from './result/result-document.js';

/** What requirements, findings and cautions look at. */
export interface AssessmentContext {
  readonly spec: BoothSpec;
  readonly air: Air;
  readonly memo: Memo;
  readonly assemblies: Readonly<Record<string, AssemblyResult>>;
  readonly booths: readonly AssessedBooth[];
  /** Build-ups and booths that cannot be assessed, by name, each with the reason. */
  readonly refused: ReadonlyMap<string, string>;
}

/** Findings also look at the verdicts. */
export interface JudgedContext extends AssessmentContext {
  readonly requirements: readonly RequirementResult[];
}
