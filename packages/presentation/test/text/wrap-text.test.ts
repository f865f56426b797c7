import fc from 'fast-check';
import { expect, test } from 'vitest';
import { displayWidth } from '../../src/text/display-width.js';
import { wrapText } from '../../src/text/wrap-text.js';

test('wrapText(text, width, first, rest) breaks between words and indents what follows', () => {
  expect(wrapText('one two three four', 10, '- ', '  ')).toBe('- one two\n  three\n  four');
});

test('wrapText(...) keeps a figure and its unit on one line', () => {
  expect(wrapText('the leaves resonate at 112 Hz, low', 27)).toBe('the leaves resonate at\n112 Hz, low');
});

test('wrapText(...) loses no word and stays within the width wherever words allow it', () => {
  fc.assert(
    fc.property(fc.array(fc.stringMatching(/^[a-z]{1,12}$/)), fc.integer({ min: 20, max: 60 }), (words, width) => {
      const wrapped = wrapText(words.join(' '), width, '  ');
      expect(wrapped.split(/\s+/).filter(Boolean)).toEqual(words);
      expect(wrapped.split('\n').every((line) => displayWidth(line) <= width)).toBe(true);
    }),
  );
});
