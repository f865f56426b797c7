import type { BoothSpec } from '@boothwright/language';
import type { UnreadPart } from '../result/result-document.js';
import { textRange } from '../text/text-range.js';

/** The errors of the text as plain objects of the result document. */
export function unreadParts(spec: BoothSpec): UnreadPart[] {
  return spec.unread.map(({ part, name, message, range }) => ({
    part,
    name: name ?? null,
    message,
    range: textRange(range),
  }));
}
