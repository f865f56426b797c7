import { surelyMeant } from '../text/surely-meant.js';

/** What an item of the budget can be for besides a material: seals by the metre, and what is bought by the piece or metre. */
export const fittingWords = [
  'compression-gasket',
  'door-gasket',
  'threshold-seal',
  'glazing-tape',
  'sealant',
  'duct',
  'grille',
  'fan',
  'door-hardware',
  'latch',
  'mount',
] as const;

export type FittingWord = (typeof fittingWords)[number];

export function isFittingWord(word: string): word is FittingWord {
  return (fittingWords as readonly string[]).includes(word);
}

/** Fittings that a word may stand for: `gasket`, `latches`, or one with a slip. */
export function fittingsMeant(word: string): readonly FittingWord[] {
  const singular = word.replace(/(?<=ch)es$|s$/, '');
  const named = fittingWords.filter((known) => known === singular || known.split('-').includes(singular));
  const near = surelyMeant(word, fittingWords);
  return named.length > 0 ? named : fittingWords.filter((known) => known === near);
}
