import type { BoothResult, RequirementResult } from '@boothwright/assessment';
import type { Statement, SymbolEntry } from '@boothwright/language';
import {
  budgetHover,
  cautionHover,
  equipmentHover,
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
  pathShareHover,
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

/** One booth that a line is about. */
interface Asked {
  readonly name: string;
  readonly booth: BoothResult;
  readonly requirements: readonly RequirementResult[];
  readonly nominalHz: readonly number[];
  /** The named thing in whose block the line stands. */
  readonly owner: string;
  readonly ownerTitle: string | undefined;
}

type Answer = (asked: Asked) => string | undefined;

const of =
  (
    hover: (name: string, booth: BoothResult, requirements: readonly RequirementResult[]) => string | undefined,
  ): Answer =>
  ({ name, booth, requirements }) =>
    hover(name, booth, requirements);
const microphoneFact =
  (fact: string): Answer =>
  ({ booth }) =>
    microphoneFactHover(fact, booth);
const ventPart =
  (part: string): Answer =>
  ({ booth, owner }) =>
    ventPartHover(part, owner, booth);
const way =
  (place: string): Answer =>
  ({ name, booth }) =>
    wayHover(place, name, booth);
const share =
  (meant: (path: BoothResult['paths'][number], owner: string) => boolean): Answer =>
  ({ name, booth, nominalHz, owner }) =>
    pathShareHover((path) => meant(path, owner), name, booth, nominalHz);
const faces = (...names: readonly string[]): Answer =>
  share(({ kind, name }) => kind === 'face' && names.includes(name));
const seal = (part: string): Answer =>
  share(({ kind, id }, door) => kind === 'door-seal' && id.endsWith(`:${door}:${part}`));
const equipment: Answer = ({ booth, owner, ownerTitle }) => equipmentHover(owner, booth, ownerTitle);

/** What a line comes to, by the words of the lines that hold it and its own. */
const answers: Readonly<Record<string, Answer>> = {
  'site doorway': way('doorway'),
  'site lift': way('lift'),
  'site floor': of(floorHover),
  'site joists': of(floorHover),
  'site humidity': of(moistureHover),
  'site cold-surface': of(moistureHover),
  'site outdoor-air': of(supplyHover),
  'site fresh-air': of(supplyHover),
  'site occupants': of(supplyHover),
  'site noise hours': of(hoursHover),
  'site impact hours': of(hoursHover),
  'booth outside': of(placeHover),
  'booth walls': faces('front', 'back', 'left', 'right'),
  'booth front': faces('front'),
  'booth back': faces('back'),
  'booth left': faces('left'),
  'booth right': faces('right'),
  'booth roof': faces('roof'),
  'booth floor': faces('floor'),
  'booth inside': of(roomSoundHover),
  'booth lining': of(roomSoundHover),
  'booth stands': of(placeHover),
  'booth mic': of(microphoneHover),
  'booth mic pattern': microphoneFact('pattern'),
  'booth mic high-pass': microphoneFact('high-pass'),
  'booth mic self-noise': microphoneFact('self-noise'),
  'booth mic distance': microphoneFact('distance'),
  'booth mouth': of(mouthHover),
  'booth panels': of(panelsHover),
  'booth panels width': of(panelsHover),
  'booth panels split': of(panelsHover),
  'booth panels fastened': of(panelsHover),
  'booth panels roof': ({ booth }) => roofHover(booth),
  'booth mounts': of(mountsHover),
  'booth contents': of(massHover),
  'booth door leaf': share(({ kind, name }, door) => kind === 'door' && name === door),
  'booth door gap perimeter': seal('perimeter'),
  'booth door gap threshold': seal('threshold'),
  'booth window pane': share(({ kind, name }, window) => kind === 'window' && name === window),
  'booth equipment kind': equipment,
  'booth equipment size': equipment,
  'booth equipment tilt': equipment,
  'booth equipment absorbs': equipment,
  'booth equipment sound-power': equipment,
  'booth equipment heat': of(heatHover),
  'booth equipment mass': of(massHover),
  'booth door swing': ({ booth, owner }) => swingHover(owner, booth),
  'booth vent duct': ventPart('duct'),
  'booth vent run': ventPart('duct'),
  'booth vent lined': ventPart('duct'),
  'booth vent bends': ventPart('bends'),
  'booth vent chamber': ventPart('chamber'),
  'booth vent maze': ventPart('maze'),
  'booth vent grille': ventPart('grille'),
  'booth vent opens-to': of(supplyHover),
  'booth vent fan': ({ name, booth, owner }) => fanHover(owner, name, booth),
  'booth vent fan curve': ({ name, booth, owner }) => fanHover(owner, name, booth),
  session: of(sessionAirHover),
  'session people': of(sessionAirHover),
  'session length': of(sessionAirHover),
  'session fan': of(sessionAirHover),
  'session take': of(sessionAirHover),
  'session co2-rate': of(sessionAirHover),
  'session supply-air': of(supplyHover),
  'session heat': of(heatHover),
  'session body-heat': of(heatHover),
  'session body-moisture': of(moistureHover),
  'session starts': of(hoursHover),
  'session effort': of(voiceHover),
  'session voice': of(microphoneHover),
  budget: of(budgetHover),
  'budget reserve': of(budgetHover),
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
    ([name, booth]) =>
      answer({
        name,
        booth,
        requirements: results.requirements,
        nominalHz: results.grid.nominalHz,
        owner: owner?.name ?? '',
        ownerTitle: owner?.title,
      }) ?? [],
  );
  return told.length === 0 ? undefined : ifStale(view, told.join('\n\n'));
}

/** The thing that the innermost named block around a line declares. */
function ownerOf({ checked, file }: View, statements: readonly Statement[]): SymbolEntry | undefined {
  const block = statements.slice(0, -1).findLast(({ fact }) => fact?.declares !== undefined);
  return (
    block &&
    checked.symbols.symbols.find(
      ({ nameRange }) =>
        nameRange.file === file && nameRange.from >= block.keyword.to && nameRange.to <= block.headerTo,
    )
  );
}
