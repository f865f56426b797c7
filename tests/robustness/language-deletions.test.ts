import { describe, it } from 'vitest';
import { every } from './every.js';
import { catalogueFixture, fixtures } from './language-fixtures.js';
import { expectAllSound, expectSound } from './language-invariants.js';

describe('a spec with one character missing', () => {
  it.each(fixtures)(
    'is read, checked and formatted without a failure, at places all over it: $name',
    ({ text }) => {
      for (let i = 0; i < text.length; i += every(text.length)) {
        const broken = text.slice(0, i) + text.slice(i + 1);
        expectAllSound(broken);
      }
    },
    300_000,
  );

  it('the catalogue too, with one word missing', () => {
    const { text } = catalogueFixture;
    for (const match of text.matchAll(/\S+/g))
      expectSound(text.slice(0, match.index) + text.slice(match.index + match[0].length));
  }, 300_000);
});

describe('a spec that ends early', () => {
  it.each(fixtures)(
    'is read, checked and formatted without a failure, wherever it ends: $name',
    ({ text }) => {
      for (let i = 0; i < text.length; i += every(text.length)) {
        expectAllSound(text.slice(0, i));
      }
    },
    300_000,
  );
});
