import type { ResultDocument } from '@boothwright/assessment';
import type { CheckResult, ParsedFile, SourceRange } from '@boothwright/language';
import type { Location } from 'vscode-languageserver';
import type { LineTable } from './line-table.js';

/** Everything that a feature may look at to answer for one document: plain values, all of the same text. */
export interface View {
  readonly uri: string;
  /** The document's name inside `checked`. */
  readonly file: string;
  readonly text: string;
  readonly lines: LineTable;
  readonly checked: CheckResult;
  readonly parsed: ParsedFile;
  /** The last assessment, its places carried over to this text. */
  readonly results: ResultDocument | undefined;
  /** True while the text is broken and the results are those of an earlier text. */
  readonly stale: boolean;
  /** True while the text is sound and its own results are still being worked out. */
  readonly pending: boolean;
  /** The same for the build-ups alone, which are there first. */
  readonly assembliesPending: boolean;
  /** The same for all but the variants, which come last. */
  readonly basePending: boolean;
  /** What the document would be checked as with another text; undefined for one that is too long. */
  checkWith(text: string): CheckResult | undefined;
  /** The view of the document with another text, which has no results yet. */
  withText(text: string): View | undefined;
  /** Where a place is in the editor; undefined when the editor cannot show it. */
  locate(range: SourceRange): Location | undefined;
}
