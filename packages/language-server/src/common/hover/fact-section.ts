import type { BoothResult, RequirementResult } from '@boothwright/assessment';
import type { Statement } from '@boothwright/language';
import {
  budgetHover,
  cautionHover,
  fanHover,
  floorHover,
  heatHover,
  hoursHover,
  massHover,
  microphoneFactHover,
  microphoneHover,
  moistureHover,
  mountsHover,
  mouthHover,
  panelsHover,
  placeHover,
  roofHover,
  roomSoundHover,
  sessionAirHover,
  supplyHover,
  swingHover,
  ventPartHover,
  voiceHover,
  wayHover,
} from '@boothwright/presentation';
import type { View } from '../view.js';
import { boothsAt } from './booths-at.js';
import { ifStale } from './if-stale.js';

type Answer = (
  name: string,
  booth: BoothResult,
  requirements: readonly RequirementResult[],
  /** Name of the thing in whose block the line stands. */
  owner: string,
) => string | undefined;

const microphoneFact =
  (fact: string): Answer =>
  (_, booth) =>
    microphoneFactHover(fact, booth);
const ventPart =
  (part: string): Answer =>
  (_, booth, __, vent) =>
    ventPartHover(part, vent, booth);

/** What a line comes to, by the words of the lines that hold it and its own. */
const answers: Readonly<Record<string, Answer>> = {
  'site doorway': (name, booth) => wayHover('doorway', name, booth),
  'site lift': (name, booth) => wayHover('lift', name, booth),
  'site floor': floorHover,
  'site joists': floorHover,
  'site humidity': moistureHover,
  'site cold-surface': moistureHover,
  'site outdoor-air': supplyHover,
  'site fresh-air': supplyHover,
  'site occupants': supplyHover,
  'site noise hours': hoursHover,
  'site impact hours': hoursHover,
  'booth inside': roomSoundHover,
  'booth lining': roomSoundHover,
  'booth stands': placeHover,
  'booth mic': microphoneHover,
  'booth mic pattern': microphoneFact('pattern'),
  'booth mic high-pass': microphoneFact('high-pass'),
  'booth mic self-noise': microphoneFact('self-noise'),
  'booth mic distance': microphoneFact('distance'),
  'booth mouth': mouthHover,
  'booth panels': panelsHover,
  'booth panels width': panelsHover,
  'booth panels split': panelsHover,
  'booth panels fastened': panelsHover,
  'booth panels roof': (_, booth) => roofHover(booth),
  'booth mounts': mountsHover,
  'booth contents': massHover,
  'booth door swing': (_, booth, __, door) => swingHover(door, booth),
  'booth vent duct': ventPart('duct'),
  'booth vent run': ventPart('duct'),
  'booth vent lined': ventPart('duct'),
  'booth vent bends': ventPart('bends'),
  'booth vent chamber': ventPart('chamber'),
  'booth vent maze': ventPart('maze'),
  'booth vent grille': ventPart('grille'),
  'booth vent fan': (name, booth, _, vent) => fanHover(vent, name, booth),
  'booth vent fan curve': (name, booth, _, vent) => fanHover(vent, name, booth),
  session: sessionAirHover,
  'session people': sessionAirHover,
  'session length': sessionAirHover,
  'session fan': sessionAirHover,
  'session take': sessionAirHover,
  'session co2-rate': sessionAirHover,
  'session supply-air': supplyHover,
  'session heat': heatHover,
  'session body-heat': heatHover,
  'session body-moisture': moistureHover,
  'session starts': hoursHover,
  'session effort': voiceHover,
  'session voice': microphoneHover,
  budget: budgetHover,
  'budget reserve': budgetHover,
};

/** What the line that starts with the word under the pointer comes to; the last of `statements` is that line. */
export function factSection(view: View, statements: readonly Statement[]): string | undefined {
  const path = statements.map(({ keyword }) => keyword.word).join(' ');
  const { results } = view;
  if (results === undefined) return undefined;
  if (path === 'site alarm') {
    const cautions = results.cautions.filter(({ id }) => id === 'alarm-not-heard');
    return cautions.length === 0 ? undefined : ifStale(view, cautions.map(cautionHover).join('\n\n'));
  }
  const answer = Object.hasOwn(answers, path) ? answers[path] : undefined;
  if (answer === undefined) return undefined;
  const owner = ownerOf(view, statements);
  const told = boothsAt(view, statements).flatMap(
    ([name, booth]) => answer(name, booth, results.requirements, owner) ?? [],
  );
  return told.length === 0 ? undefined : ifStale(view, told.join('\n\n'));
}

/** The name that the innermost named block around a line declares. */
function ownerOf({ checked, file }: View, statements: readonly Statement[]): string {
  const block = statements.slice(0, -1).findLast(({ fact }) => fact?.declares !== undefined);
  if (block === undefined) return '';
  return (
    checked.symbols.symbols.find(
      ({ nameRange }) =>
        nameRange.file === file && nameRange.from >= block.keyword.to && nameRange.to <= block.headerTo,
    )?.name ?? ''
  );
}
