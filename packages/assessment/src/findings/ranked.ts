import type { JudgedContext } from '../assessment-context.js';
import { costOfChange } from '../build/cost-of-change.js';
import type { Finding } from '../result/result-document.js';
import { decimals } from '../text/decimals.js';
import { joined } from '../text/joined.js';
import { editsOfFix } from './edits-of-fix.js';
import { type Effect, effectOfFix } from './effect-of-fix.js';
import type { Found } from './found.js';

/** A fix that brings less than this on every missed requirement is not where to start, dB. */
export const worthwhileGainDb = 0.5;

/** By code unit, so that no locale enters. */
function ordered(a: string, b: string): number {
  return a < b ? -1 : a > b ? 1 : 0;
}

/**
 * Findings in the order of what to change first: by the share of what is missing that their fix brings on a missed
 * requirement, then those whose effect is not computed, then those whose fix hardly brings anything. Within each in the
 * order of the text and then by id. What a fix brings stands in its words and figures.
 */
export function ranked(found: readonly Found[], context: JudgedContext): Finding[] {
  return found
    .map((entry) => {
      const effect = effectOfFix(entry, context);
      return {
        finding: told(entry, effect, context),
        rank: rankOf(entry, effect),
        share: entry.meets ? 1 : (effect?.share ?? 0),
      };
    })
    .sort(
      (a, b) =>
        a.rank - b.rank ||
        (a.rank === 0 ? b.share - a.share : 0) ||
        ordered(a.finding.range.file, b.finding.range.file) ||
        a.finding.range.from - b.finding.range.from ||
        ordered(a.finding.id, b.finding.id),
    )
    .map(({ finding }) => finding);
}

function rankOf({ meets }: Found, effect: Effect | null): 0 | 1 | 2 {
  if (meets) return 0;
  if (effect === null) return 1;
  return effect.gain >= worthwhileGainDb ? 0 : 2;
}

function told(found: Found, effect: Effect | null, context: JudgedContext): Finding {
  const { fixed, meets: _, ...finding } = found;
  const edits = editsOfFix(
    found,
    context.booths.map(({ booth }) => booth),
  );
  if (effect === null) return { ...finding, edits };
  const { requirement, before, after, gain } = effect;
  const { unit } = requirement;
  const cost = gain >= worthwhileGainDb ? costWords(fixed, requirement.booth, gain, unit, context) : null;
  const figures = {
    ...finding.figures,
    requirementBefore: before,
    requirementAfter: after,
    requirementGain: gain,
    ...cost?.figures,
  };
  const words =
    gain >= worthwhileGainDb
      ? `That change takes \`${requirement.text}\` from ${decimals(before, 1)} to ${decimals(after, 1)} ${unit}.${cost?.words ?? ''}`
      : `No missed requirement gains ${worthwhileGainDb} dB by it (\`${requirement.text}\`: ${decimals(before, 1)} to ${decimals(after, 1)} ${unit}), so it is not where to start.`;
  return { ...finding, fix: `${finding.fix} ${words}`, figures, edits };
}

/** What the parts that a fix changes cost, and what that makes for a unit of the gain; null where it changes no part. */
function costWords(
  fixed: Found['fixed'],
  name: string | null,
  gain: number,
  unit: string,
  { booths }: JudgedContext,
): { readonly words: string; readonly figures: Readonly<Record<string, number>> } | null {
  const own = booths.find(({ booth }) => booth.name === name);
  if (fixed === undefined || own === undefined) return null;
  const cost = costOfChange(own.booth, fixed(own.booth), own.result.build.shopping.stock);
  if (cost === null) return null;
  const { money, withoutPrice } = cost;
  if (money === null) {
    const why =
      withoutPrice.length > 0 ? `${joined(withoutPrice)} has no price here` : 'prices are in several currencies';
    return { words: ` What it costs is not known: ${why}.`, figures: {} };
  }
  const { amount, currency } = money;
  const words =
    amount < 0
      ? ` It saves about ${decimals(-amount, 0)} ${currency} of material.`
      : ` It takes about ${decimals(amount, 0)} ${currency} more material, ${decimals(amount / gain, 1)} ${currency} for each ${unit.startsWith('dB') ? 'dB' : 'point'}.`;
  return { words, figures: { [`cost ${currency}`]: amount } };
}
