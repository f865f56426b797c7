import { didYouMean } from '@boothwright/language';
import { describe, expect, it } from 'vitest';

describe('didYouMean(name, known)', () => {
  it('finds the nearest name within a third of the length', () => {
    expect(didYouMean('gypsm-board', ['osb', 'gypsum-board'])).toBe('gypsum-board');
    expect(didYouMean('tarm', ['tram', 'team'])).toBe('tram');
    expect(didYouMean('Shell', ['shell'])).toBe('shell');
  });
  it('finds nothing when nothing is near', () => {
    expect(didYouMean('gap', ['reverberation', 'x'])).toBeUndefined();
    expect(didYouMean('', ['a'])).toBe('a');
    expect(didYouMean('abcdef', [])).toBeUndefined();
  });
});
