import { weightedTotal } from '@boothwright/acoustics';
import type { AirPart } from '../result/noise-result.js';
import type { BoothResult, ByBand } from '../result/result-document.js';

/** A sound that does not come through the walls. */
export interface OwnSound {
  /** `fan`, `air`, `air-at-openings` or `equipment:NAME` */
  readonly id: string;
  /** The sound, and its way in: `the fan` and `its duct`. */
  readonly source: string;
  readonly words: string;
  /** Both in a sentence: `the fan through its duct`. */
  readonly phrase: string;
  readonly levels: ByBand;
}

/** The sounds of the booth itself at the setting of the session. */
export function ownSounds({
  fan,
  airInDucts,
  airAtOpenings,
  airParts,
  equipment,
}: Pick<BoothResult['noise'], 'fan' | 'airInDucts' | 'airAtOpenings' | 'airParts' | 'equipment'>): OwnSound[] {
  return [
    ...(fan === null ? [] : [fanSound(fan.byBand)]),
    ...(airInDucts === null
      ? []
      : [
          {
            id: 'air',
            source: 'the air',
            words: 'its ducts',
            phrase: 'the moving air in its ducts',
            levels: airInDucts.byBand,
          },
        ]),
    ...(airAtOpenings === null
      ? []
      : [
          {
            id: 'air-at-openings',
            source: 'the air',
            words: loudestOpening(airParts),
            phrase: `the hiss of the air at ${loudestOpening(airParts)}`,
            levels: airAtOpenings.byBand,
          },
        ]),
    ...equipment.map(({ name, atMicrophone }) => ({
      id: `equipment:${name}`,
      source: name,
      words: 'the air inside',
      phrase: `${name}, which stands inside`,
      levels: atMicrophone.byBand,
    })),
  ];
}

export function fanSound(levels: ByBand): OwnSound {
  return { id: 'fan', source: 'the fan', words: 'its duct', phrase: 'the fan through its duct', levels };
}

/** `the grille of in` or `the end of the duct out`, whichever is heard most. */
function loudestOpening(parts: readonly AirPart[]): string {
  const loudness = ({ byBand }: AirPart) => weightedTotal(byBand, 'A') ?? Number.NEGATIVE_INFINITY;
  const [loudest] = parts.filter(({ way }) => way !== 'duct').toSorted((a, b) => loudness(b) - loudness(a));
  if (loudest === undefined) return 'its openings';
  return loudest.way === 'grille' ? `the grille of ${loudest.vent}` : `the end of the duct ${loudest.vent}`;
}
