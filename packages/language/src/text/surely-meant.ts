import { editDistance } from './edit-distance.js';

/** Shorter words are changed into too many others by one letter. */
const shortest = 4;

/**
 * The known word that a misspelt one can only have been: one slip away (a letter too many, too few or wrong, or two
 * swapped), with every other known word further away. Undefined where that is in doubt.
 */
export function surelyMeant(word: string, known: readonly string[]): string | undefined {
  if (word.length < shortest) return undefined;
  const near = [...new Set(known)].filter(
    (candidate) => editDistance(word.toLowerCase(), candidate.toLowerCase(), 2) === 1,
  );
  return near.length === 1 ? near[0] : undefined;
}
