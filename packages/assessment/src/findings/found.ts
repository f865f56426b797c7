import type { Booth } from '@boothwright/language';
import type { Finding } from '../result/result-document.js';

/** A finding with what its fix changes, so that the effect of the fix on the requirements can be computed. */
export interface Found extends Finding {
  /** The booth with the fix applied; the same booth where it changes nothing. Absent where no fix can be computed. */
  readonly fixed?: (booth: Booth) => Booth;
  /** True for a finding about a requirement that is missed, whose fix meets it. */
  readonly meets?: boolean;
}
