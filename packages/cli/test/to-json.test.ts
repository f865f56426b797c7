import fc from 'fast-check';
import { expect, test } from 'vitest';
import { toJson } from '../src/to-json.js';

test('toJson(value) says what JSON.stringify says', () => {
  fc.assert(
    fc.property(fc.jsonValue({ noUnicodeString: false }), (value) => {
      expect(JSON.parse(toJson(value))).toEqual(JSON.parse(JSON.stringify(value)));
    }),
  );
});

test('toJson(value) keeps a list of figures on one line and leaves undefined out', () => {
  expect(toJson({ bands: [1, null, 2.5], nothing: undefined, empty: [], parts: [{ a: 1 }] })).toBe(
    '{\n  "bands": [1, null, 2.5],\n  "empty": [],\n  "parts": [\n    {\n      "a": 1\n    }\n  ]\n}',
  );
});
