import type { Booth } from '@boothwright/language';
import type { AssessmentContext, JudgedContext } from '../assessment-context.js';
import { assessBooth } from '../booth/assess-booth.js';
import { judgeRequirements } from '../requirements/judge.js';
import type { RequirementResult } from '../result/result-document.js';
import type { Found } from './found.js';

/** What the fix of a finding does to the missed requirement that it helps most. */
export interface Effect {
  readonly requirement: RequirementResult;
  readonly before: number;
  readonly after: number;
  /** By how much it comes closer to its limit, in its own unit. */
  readonly gain: number;
  /** Share of what is missing that the fix brings, at most 1. */
  readonly share: number;
}

/** Requirements whose values are levels, so that a gain is one in decibels (or in NC, which counts alike). */
const levelKinds: ReadonlySet<string> = new Set(['room-tone', 'isolation', 'voice-outside']);

/**
 * The largest effect of a fix on the missed requirements about levels, by assessing each booth with the fix and judging
 * again. Null when no fix can be computed or no such requirement is missed.
 */
export function effectOfFix(found: Found, context: JudgedContext): Effect | null {
  const { fixed } = found;
  if (fixed === undefined) return null;
  const missed = context.requirements.filter(isMissedLevel);
  let best: Effect | null = null;
  for (const { booth } of context.booths) {
    const own = missed.filter((entry) => entry.booth === booth.name);
    if (own.length === 0) continue;
    for (const effect of effectsOn(own, booth, fixed(booth), context)) {
      if (best === null || effect.share > best.share) best = effect;
    }
  }
  return best;
}

function isMissedLevel({ kind, verdict, value, margin }: RequirementResult): boolean {
  return levelKinds.has(kind) && verdict === 'missed' && value !== null && margin !== null;
}

function effectsOn(
  missed: readonly RequirementResult[],
  booth: Booth,
  changed: Booth,
  context: JudgedContext,
): Effect[] {
  const { spec, air, memo } = context;
  const before = context.booths.find((assessed) => assessed.booth === booth)?.result;
  const verdicts = changed === booth ? context.requirements : judgedAgain(changed, context);
  return missed.flatMap((entry) => {
    const now = verdicts.find(
      ({ booth: name, range }) =>
        name === booth.name && range.from === entry.range.from && range.file === entry.range.file,
    );
    const was = entry.value?.value;
    const after = now?.value?.value;
    if (was === undefined || after === undefined) return [];
    const gain = entry.kind === 'isolation' ? after - was : was - after;
    const missing = Math.abs(entry.margin ?? 0);
    return [{ requirement: entry, before: was, after, gain, share: missing > 0 ? Math.min(1, gain / missing) : 1 }];
  });

  function judgedAgain(other: Booth, { assemblies, refused }: AssessmentContext): RequirementResult[] {
    const requirements = spec.requirements.filter(({ kind }) => levelKinds.has(kind));
    return judgeRequirements({
      spec: { ...spec, requirements, booths: [other] },
      air,
      memo,
      assemblies,
      refused,
      booths: [assessBooth(other, spec, air, memo, before)],
    });
  }
}
