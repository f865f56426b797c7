import type { BoothSpec, Requirement, Unread } from '@boothwright/language';
import type { RequirementResult } from '../result/result-document.js';
import { boothUnread } from '../unread/booth-unread.js';
import { materialLines } from '../unread/material-lines.js';
import { linesTouch, touches } from '../unread/touches.js';
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

/** The air of the site enters every wall and every decay; its noise and its room what is heard; its air what is breathed. */
const needsSite: ReadonlySet<Requirement['kind']> = new Set([
  'room-tone',
  'isolation',
  'voice-outside',
  'reverberation',
  'decay-ratio',
  'rating',
  'co2',
  'temperature-rise',
]);

/** People absorb sound, breathe and weigh; the voice sets the level of a recording. */
const needsSession: ReadonlySet<Requirement['kind']> = new Set([
  'room-tone',
  'isolation',
  'voice-outside',
  'reverberation',
  'decay-ratio',
  'co2',
  'temperature-rise',
  'floor-load',
]);

function dependsOn(requirement: Requirement, booth: string | null, spec: BoothSpec): readonly Unread[] {
  const { kind } = requirement;
  const of = (...parts: readonly Unread['part'][]) => spec.unread.filter(({ part }) => parts.includes(part));
  if (kind === 'cost') {
    // A list that is held against the parts depends on what the parts are cut from.
    const counted =
      spec.budget?.items.some(({ covers, fitting }) => covers !== undefined || fitting !== undefined) === true;
    return [
      ...of('budget', 'let', 'outside'),
      ...(counted
        ? boothUnread(spec, null).filter((unread) => unread.part !== 'let' && unread.part !== 'outside')
        : []),
    ].filter((unread) => touches(unread, kind));
  }
  const site = needsSite.has(kind) ? of('site').filter((unread) => touches(unread, kind)) : [];
  if (kind === 'rating') {
    const own = of('assembly').filter(({ name }) => name === undefined || name === requirement.assembly.name);
    return [...own, ...of('material', 'let', 'use', 'outside'), ...site];
  }
  const session = needsSession.has(kind) ? of('session') : [];
  return [...boothUnread(spec, booth), ...site, ...session].filter(
    (unread) => touches(unread, kind) && (unread.part !== 'material' || materialTouches(unread.name, kind, spec)),
  );
}

/** A liner that could not be read changes what is heard through its duct; the weight of a panel stays what it is. */
function materialTouches(name: string | undefined, kind: Requirement['kind'], spec: BoothSpec): boolean {
  const lines = name === undefined ? null : materialLines(spec, name);
  return lines === null || linesTouch(lines, kind);
}
