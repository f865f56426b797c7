import type { RequirementResult, ResultDocument } from '@boothwright/assessment';
import { requirementName } from '../numbers/requirement-words.js';
import { variantEffects } from '../text/sections/variant-effects.js';
import { verdictSign } from './verdict-sign.js';

/** A variant in one line: what it meets, which verdicts it turns, which figures it moves, and what that costs. */
export function variantLens(name: string, results: ResultDocument): string | undefined {
  const variant = results.variants[name];
  if (variant === undefined) return undefined;
  const { gained, lost, nearer, farther, costs } = variantEffects(results, variant);
  const told = [
    list('now met', gained),
    list('now missed', lost),
    list('nearer', nearer),
    list('farther', farther),
    ...costs,
  ].filter((part) => part !== undefined);
  const effect = told.length > 0 ? told : [variant.changes.length > 0 ? 'turns no verdict' : 'changes nothing'];
  return [verdictSign(variant.requirements), ...effect].join(' · ');
}

/** A line above the text has room for two names. */
const most = 2;

function list(word: string, pairs: readonly { readonly variant: RequirementResult }[]): string | undefined {
  if (pairs.length === 0) return undefined;
  const names = pairs.slice(0, most).map(({ variant }) => requirementName(variant));
  const more = pairs.length > most ? ` and ${pairs.length - most} more` : '';
  return `${word}: ${names.join(', ')}${more}`;
}
