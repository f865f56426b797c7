import type { BoothResult, ComparisonDocument, ResultDocument, TextRange } from '@boothwright/assessment';
import type { Booth, Budget } from '@boothwright/language';
import type { ChartSize } from '../charts/frame.js';
import type { SheetElement } from './element-at.js';

/** What the sections of a sheet are drawn from. */
export interface SheetInput {
  /** Of the base, or of the variant that is shown. */
  readonly results: ResultDocument;
  readonly name: string;
  readonly booth: BoothResult;
  /** What the cursor stands on. */
  readonly element: SheetElement;
  /** As the text has them, for their places; undefined where the text has none. */
  readonly spec: Booth | undefined;
  readonly budget: Budget | undefined;
  readonly sessionRange: TextRange | undefined;
  readonly size: ChartSize;
  /** What changed since the last commit; undefined where that is not known, and for a variant. */
  readonly comparison?: ComparisonDocument | undefined;
}

/** A picture for a column of so many pixels: not so low that figures crowd, nor so high that two do not fit a screen. */
export function sheetSize(width: number): ChartSize {
  const inside = Math.round(Math.min(900, Math.max(260, Number.isFinite(width) ? width : 0)));
  return { width: inside, height: Math.round(Math.min(230, Math.max(180, inside * 0.36))), names: false };
}
