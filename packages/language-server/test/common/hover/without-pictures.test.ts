import { expect, it } from 'vitest';
import { withoutPictures } from '../../../src/common/hover/without-pictures.js';

it('puts the words of a picture in its place', () => {
  const text = 'before\n\n![STC 33 \\[dB\\]](data:image/svg+xml;base64,AAAA|width=1,height=1)\n\nafter';
  expect(withoutPictures(text)).toBe('before\n\n_STC 33 \\[dB\\]_\n\nafter');
});

it('leaves other links as they are', () => {
  expect(withoutPictures('[page](https://example.org)')).toBe('[page](https://example.org)');
});
