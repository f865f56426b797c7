import type { ResultDocument } from '@boothwright/assessment';
import type { BoothSpec, Severities } from '@boothwright/language';
import { type Shown, showing, shownAtFirst } from '@boothwright/presentation';
import { type CodeAction, CodeActionKind } from 'vscode-languageserver';
import { editOf } from '../code-actions.js';
import type { View } from '../view.js';
import { type ComputedFix, computedFix } from './computed-fix.js';
import { type DesignCandidate, designCandidates } from './design-candidates.js';
import type { Promised } from './promise.js';
import { promiseWords } from './promise-words.js';

export interface DesignOptions {
  assess(spec: BoothSpec): Promise<ResultDocument>;
  /** As the settings want findings and missed requirements told. */
  readonly severities?: Severities;
  /** In which units titles tell what a fix does. */
  readonly shown?: Shown;
  /** Lets what has arrived in the meantime be dealt with. */
  pause(): Promise<void>;
  /** False once the answer is not wanted any more, or the text has changed. */
  isWanted(): boolean;
}

/** A list longer than this is not read. */
const mostOffered = 8;
/** Less than this, in dB or points of a rating, is no gain. */
const leastGain = 0.5;
/** Less than this of what is missing is none either. */
const leastShare = 0.05;
const levelUnit = /^(dB|NC|STC)/;

/** What was worked out for one text, so that moving the cursor works nothing out twice. */
export interface DesignMemory {
  readonly text: string;
  readonly fixes: Map<string, ComputedFix | null>;
}

/**
 * Design fixes at a place, the most helpful first, each with what it was computed to do. One at a time is worked out, and
 * none any more once the answer is not wanted; what was ready by then is answered.
 */
export async function designFixes(
  view: View,
  results: ResultDocument,
  from: number,
  to: number,
  memory: DesignMemory,
  options: DesignOptions,
): Promise<CodeAction[]> {
  const ready: { readonly fix: ComputedFix; readonly of: DesignCandidate }[] = [];
  for (const of of designCandidates(view, results, from, to, options.severities ?? {})) {
    const key = JSON.stringify([of.booth, of.requirement?.range.from, of.candidate.changes]);
    let fix = memory.fixes.get(key);
    if (fix === undefined) {
      await options.pause();
      if (!options.isWanted()) break;
      fix = (await computedFix(view, results, of.candidate, of, options.assess)) ?? null;
      if (memory.text === view.text) memory.fixes.set(key, fix);
    }
    if (fix !== null && isWorthwhile(fix.promised, of)) ready.push({ fix, of });
  }
  return ready
    .sort((a, b) => share(b.fix.promised) - share(a.fix.promised) || benefit(b.fix.promised) - benefit(a.fix.promised))
    .slice(0, mostOffered)
    .map(({ fix, of: { diagnostic } }) => ({
      title: `${fix.title}: ${showing(options.shown ?? shownAtFirst, () => promiseWords(fix.promised))}`,
      kind: diagnostic === undefined ? CodeActionKind.RefactorRewrite : CodeActionKind.QuickFix,
      ...(diagnostic === undefined ? {} : { diagnostics: [diagnostic] }),
      edit: editOf(view, fix.changes),
      data: { promised: fix.promised },
    }));
}

function share({ requirement }: Promised): number {
  return requirement?.share ?? 0;
}

/** The largest gain: on a missed requirement in decibels, on the room tone, on a rating. */
function benefit({ requirement, booth, assembly }: Promised): number {
  const stc = assembly?.stc ?? booth?.stc;
  return Math.max(
    requirement !== null && levelUnit.test(requirement.unit) ? requirement.gain : 0,
    booth?.roomToneDbA ? booth.roomToneDbA.before - booth.roomToneDbA.after : 0,
    stc === undefined ? 0 : stc.after - stc.before,
  );
}

/** For a requirement only what brings it closer counts. */
function isWorthwhile(promised: Promised, { requirement }: DesignCandidate): boolean {
  if (requirement === undefined) return benefit(promised) >= leastGain;
  const of = promised.requirement;
  return of !== null && of.share >= leastShare && (of.gain >= leastGain || !levelUnit.test(of.unit));
}
