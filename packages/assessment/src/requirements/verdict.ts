import type { Requirement } from '@boothwright/language';
import type { Ranged, RequirementResult } from '../result/result-document.js';
import { textRange } from '../text/text-range.js';

interface Judged {
  readonly requirement: Requirement;
  readonly booth?: string | null;
  readonly value: Ranged;
  readonly limit: number;
  readonly unit: string;
  /** `at-most`: the value must not pass the limit; `at-least`: it must reach it. */
  readonly sense: 'at-most' | 'at-least';
  readonly limitedBy?: string | null;
  readonly explanation: string;
  /** The value is a lower bound. */
  readonly atLeast?: boolean;
}

/** A value against its limit. Exactly at the limit is met. */
export function judged({
  requirement,
  booth,
  value,
  limit,
  unit,
  sense,
  limitedBy,
  explanation,
  atLeast,
}: Judged): RequirementResult {
  const margin = sense === 'at-most' ? limit - value.value : value.value - limit;
  return {
    text: requirement.text,
    kind: requirement.kind,
    booth: booth ?? null,
    range: textRange(requirement.range),
    verdict: margin >= 0 ? 'met' : 'missed',
    value,
    ...(atLeast === true ? { atLeast: true as const } : {}),
    limit,
    unit,
    margin,
    // One end of the range meets the limit and the other misses it; exactly at the limit is met.
    withinRange:
      sense === 'at-most' ? value.low <= limit && limit < value.high : value.low < limit && limit <= value.high,
    limitedBy: limitedBy ?? null,
    explanation,
  };
}

interface NotAssessed {
  readonly requirement: Requirement;
  readonly booth?: string | null;
  readonly limit: number;
  readonly unit: string;
  readonly explanation: string;
  /** What could still be computed. */
  readonly value?: Ranged | null;
  readonly atLeast?: boolean;
}

export function notAssessed({
  requirement,
  booth,
  limit,
  unit,
  explanation,
  value,
  atLeast,
}: NotAssessed): RequirementResult {
  return {
    text: requirement.text,
    kind: requirement.kind,
    booth: booth ?? null,
    range: textRange(requirement.range),
    verdict: 'not-assessed',
    value: value ?? null,
    ...(atLeast === true ? { atLeast: true as const } : {}),
    limit,
    unit,
    margin: null,
    withinRange: false,
    limitedBy: null,
    explanation,
  };
}

/** A verdict withdrawn because something that could spoil it is unknown. A missed one stands. */
export function unlessMissed(result: RequirementResult, why: string): RequirementResult {
  if (result.verdict !== 'met') return result;
  return {
    ...result,
    verdict: 'not-assessed',
    margin: null,
    withinRange: false,
    explanation: `${result.explanation} ${why}`,
  };
}
