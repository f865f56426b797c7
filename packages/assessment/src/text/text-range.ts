import type { SourceRange } from '@boothwright/language';
import type { TextRange } from '../result/result-document.js';

/** The place in the text as a plain object of the result document. */
export function textRange(range: SourceRange): TextRange {
  return { file: range.file, from: range.from, to: range.to };
}
