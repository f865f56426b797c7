import type { SourceRange } from '@boothwright/language';
import type { Caution } from '../result/result-document.js';
import { textRange } from '../text/text-range.js';

/** Every caution ends with whom to ask: nothing here is a judgement of fitness. */
export function caution(
  id: string,
  range: SourceRange,
  parts: {
    readonly severity?: Caution['severity'];
    readonly hazard: string;
    readonly number?: string | null;
    readonly why: string;
    readonly ask: string;
  },
): Caution {
  return {
    id,
    severity: parts.severity ?? 'caution',
    range: textRange(range),
    hazard: parts.hazard,
    number: parts.number ?? null,
    why: parts.why,
    ask: parts.ask,
  };
}
