import type { BoothSpec, Requirement, Unread } from '@boothwright/language';
import type { RequirementResult } from '../result/result-document.js';
import { boothUnread } from '../unread/booth-unread.js';
import { unreadSentence } from '../unread/unread-words.js';

/**
 * Withdraws a verdict, met or missed, that depends on a part of the text that could not be read: a wall with a misspelt
 * layer is not the wall that was meant. What could be computed is still shown. A verdict that is open for another reason
 * keeps that reason and gets this one beside it.
 */
export function unlessUnread(result: RequirementResult, requirement: Requirement, spec: BoothSpec): RequirementResult {
  const unread = dependsOn(requirement, result.booth, spec);
  if (unread.length === 0) return result;
  const why = unreadSentence(unread);
  return {
    ...result,
    verdict: 'not-assessed',
    margin: null,
    withinRange: false,
    limitedBy: null,
    explanation: result.verdict === 'not-assessed' ? `${result.explanation} ${why}` : why,
  };
}

/** The air of the site enters every wall and every decay; its noise and its room what is heard. */
const needsSite: ReadonlySet<Requirement['kind']> = new Set([
  'room-tone',
  'isolation',
  'voice-outside',
  'reverberation',
  'rating',
]);

/** People absorb sound, breathe and weigh; the voice sets the level of a recording. */
const needsSession: ReadonlySet<Requirement['kind']> = new Set([
  'room-tone',
  'isolation',
  'voice-outside',
  'reverberation',
  'co2',
  'floor-load',
]);

function dependsOn(requirement: Requirement, booth: string | null, spec: BoothSpec): readonly Unread[] {
  const { kind } = requirement;
  const of = (...parts: readonly Unread['part'][]) => spec.unread.filter(({ part }) => parts.includes(part));
  if (kind === 'cost') return of('budget', 'let', 'outside');
  const site = needsSite.has(kind) ? of('site') : [];
  if (kind === 'rating') {
    const own = of('assembly').filter(({ name }) => name === undefined || name === requirement.assembly.name);
    return [...own, ...of('material', 'let', 'use', 'outside'), ...site];
  }
  return [...boothUnread(spec, booth), ...site, ...(needsSession.has(kind) ? of('session') : [])];
}
