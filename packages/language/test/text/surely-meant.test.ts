import { describe, expect, it } from 'vitest';
import { surelyMeant } from '../../src/text/surely-meant.js';

const known = ['lining', 'vent', 'left', 'mouth', 'mounts', 'mic', 'swing'];

describe('surelyMeant(word, known)', () => {
  it.each([
    ['linning', 'lining'],
    ['lihing', 'lining'],
    ['lniing', 'lining'],
    ['Vemt', 'vent'],
    ['swng', 'swing'],
  ])('%s is %s with a slip', (word, meant) => expect(surelyMeant(word, known)).toBe(meant));

  it.each([
    ['mounth', 'stands between two words'],
    ['lnnngi', 'is more than one slip away'],
    ['mik', 'is too short to be sure'],
    ['lining', 'is no misspelling'],
  ])('%s %s', (word) => expect(surelyMeant(word, known)).toBeUndefined());
});
