import { type Allowance, didYouMean } from '@boothwright/language';
import { isDeadly } from '../cautions/deadly-cautions.js';
import type { AllowanceResult, Caution, Finding } from '../result/result-document.js';
import { textRange } from '../text/text-range.js';
import { cautionIds, findingIds } from './known-ids.js';

interface Told {
  readonly findings: readonly Finding[];
  readonly cautions: readonly Caution[];
}

export interface Allower {
  /**
   * The findings and cautions that no comment allows; the others are noted. The base comes first: of a variant only what
   * the base does not have is noted, since the same hazard with other figures is no second one.
   */
  readonly keep: (told: Told) => { findings: Finding[]; cautions: Caution[] };
  /** What became of each comment, after everything was kept or allowed. */
  readonly results: () => AllowanceResult[];
}

/**
 * Takes the findings and cautions that the comments of a text allow, with their reasons, out of what is told, and keeps
 * them on a list of their own. What can kill, and what calls for a stop, is told whatever a comment says.
 */
export function allower(allowances: readonly Allowance[]): Allower {
  const taken = new Map<Allowance, Set<string>>();
  const refused = new Set<Allowance>();
  let ofBase: ReadonlySet<Allowance> | undefined;
  const allowanceOf = ({ id, range }: Finding | Caution): Allowance | undefined =>
    allowances.find(
      ({ id: own, covers }) =>
        own === id && covers.file === range.file && covers.from <= range.from && range.from <= covers.to,
    );
  const take = (entry: Finding | Caution, words: string, firm: boolean): boolean => {
    const allowance = allowanceOf(entry);
    if (allowance === undefined) return true;
    if (firm) {
      refused.add(allowance);
      return true;
    }
    if (!ofBase?.has(allowance)) taken.set(allowance, (taken.get(allowance) ?? new Set()).add(words));
    return false;
  };
  return {
    keep: ({ findings, cautions }) => {
      const kept = {
        findings: findings.filter((finding) => take(finding, finding.message, false)),
        cautions: cautions.filter((caution) =>
          take(caution, hazardWords(caution), caution.severity === 'stop' || isDeadly(caution)),
        ),
      };
      ofBase ??= new Set(taken.keys());
      return kept;
    },
    results: () =>
      allowances.map((allowance) => {
        const { id, reason, range } = allowance;
        const words = [...(taken.get(allowance) ?? [])];
        const kind = findingIds.has(id) ? 'finding' : cautionIds.has(id) ? 'caution' : null;
        const state = stateOf(kind !== null, refused.has(allowance), words.length > 0);
        const note = noteOf(state, id);
        return { id, kind, reason, range: textRange(range), state, told: words, note };
      }),
  };
}

function hazardWords({ hazard, number }: Caution): string {
  return number === null ? hazard : `${hazard} (${number})`;
}

function stateOf(known: boolean, refused: boolean, used: boolean): AllowanceResult['state'] {
  if (!known) return 'unknown';
  if (refused) return 'refused';
  return used ? 'allowed' : 'unused';
}

function noteOf(state: AllowanceResult['state'], id: string): string {
  switch (state) {
    case 'allowed':
      return '';
    case 'refused':
      return `\`${id}\` is a hazard that can kill or calls for a stop, so no comment can allow it`;
    case 'unused':
      return `nothing called \`${id}\` is told at the line that this comment speaks of`;
    case 'unknown': {
      const near = didYouMean(id, [...findingIds, ...cautionIds]);
      return `nothing that is told is called \`${id}\`${near === undefined ? '' : `; did you mean \`${near}\`?`}`;
    }
  }
}
