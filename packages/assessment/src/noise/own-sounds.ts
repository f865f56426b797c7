import type { BoothResult, ByBand } from '../result/result-document.js';

/** A sound that does not come through the walls. */
export interface OwnSound {
  /** `fan`, `air` or `equipment:NAME` */
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
  equipment,
}: Pick<BoothResult['noise'], 'fan' | 'airInDucts' | 'equipment'>): OwnSound[] {
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
