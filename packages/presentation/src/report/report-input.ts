import type { ResultDocument } from '@boothwright/assessment';
import type { BoothSpec, Problem } from '@boothwright/language';

/** Everything that a report is written from. */
export interface ReportInput {
  /** `file` is named as the user names it. */
  readonly result: ResultDocument;
  /** The checked text, for what its materials rest on. */
  readonly spec: BoothSpec;
  /** Errors and warnings of the text. */
  readonly problems: readonly Problem[];
  /** The text of each file by its name, for places. */
  readonly texts: ReadonlyMap<string, string>;
  /** The variant that stands in place of the base. */
  readonly variant?: string | undefined;
}
