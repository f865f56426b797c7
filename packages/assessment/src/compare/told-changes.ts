import type { ToldChanges } from './comparison-document.js';

interface Told {
  readonly id: string;
}

/**
 * Findings or hazards that came, went or changed. Those of one kind with the same words are the same; of the others as many as
 * both sides have are the same with other figures.
 */
export function toldChanges<T extends Told>(
  old: readonly T[],
  now: readonly T[],
  oldWords: (told: T) => string,
  newWords: (told: T) => string,
): ToldChanges<T> {
  const free = new Set(now);
  const take = (fits: (one: T) => boolean) => {
    const found = [...free].find(fits);
    if (found !== undefined) free.delete(found);
    return found;
  };
  const unlike = old.filter(
    (before) => take((after) => before.id === after.id && oldWords(before) === newWords(after)) === undefined,
  );
  const lost: T[] = [];
  const changed: { old: T; new: T }[] = [];
  for (const before of unlike) {
    const after = take((one) => one.id === before.id);
    if (after === undefined) lost.push(before);
    else changed.push({ old: before, new: after });
  }
  return { gained: now.filter((one) => free.has(one)), lost, changed };
}
