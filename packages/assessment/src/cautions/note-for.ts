import type { SourceRange } from '@boothwright/language';
import type { Caution } from '../result/result-document.js';
import { caution } from './caution-for.js';

/** A hazard that any booth of the kind has: it stands after those that this very text brings up. */
export function note(id: string, range: SourceRange, parts: Omit<Parameters<typeof caution>[2], 'severity'>): Caution {
  return caution(id, range, { ...parts, severity: 'note' });
}
