import fc from 'fast-check';
import { expect, test } from 'vitest';
import { encodeBase64 } from '../../src/charts/encode-base64.js';

test('encodeBase64(text) gives the examples of RFC 4648, section 10', () => {
  expect(['', 'f', 'fo', 'foo', 'foob', 'fooba', 'foobar'].map(encodeBase64)).toEqual([
    '',
    'Zg==',
    'Zm8=',
    'Zm9v',
    'Zm9vYg==',
    'Zm9vYmE=',
    'Zm9vYmFy',
  ]);
});

test('encodeBase64(text) encodes as the platform does, for any text', () => {
  fc.assert(
    fc.property(fc.string({ unit: 'binary' }), (text) => {
      expect(encodeBase64(text)).toBe(Buffer.from(text, 'utf8').toString('base64'));
    }),
  );
});

test('encodeBase64(text) puts the replacement character for half a surrogate pair', () => {
  expect(encodeBase64('\ud800')).toBe(Buffer.from('\ufffd', 'utf8').toString('base64'));
});
