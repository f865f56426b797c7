import type { DisplayUnits } from './length-text.js';

/** The ratings of a wall that a reader may want to see first. */
export const ratingNames = ['STC', 'Rw', 'Rw+C', 'Rw+Ctr', 'OITC'] as const;
export type RatingName = (typeof ratingNames)[number];

/** What a reader asked for: in which units figures are told, and which ratings where there is room for few. */
export interface Shown {
  readonly units: DisplayUnits;
  readonly ratings: readonly RatingName[];
}

export const shownAtFirst: Shown = { units: 'metric', ratings: ['STC'] };

let current: Shown = shownAtFirst;

/**
 * Writes for a reader who asked for `shown`. Every hover and label is written in one go, without waiting, so what holds
 * while `write` runs holds for that answer only; outside of it everything is told as at first.
 */
export function showing<T>(shown: Shown, write: () => T): T {
  const before = current;
  current = shown;
  try {
    return write();
  } finally {
    current = before;
  }
}

export function isImperial(): boolean {
  return current.units === 'imperial';
}

export function shownUnits(): DisplayUnits {
  return current.units;
}

export function shownRatings(): readonly RatingName[] {
  return current.ratings;
}
