import { expect, test } from 'vitest';
import { ArgumentError } from '../../src/errors/argument-error.js';
import { requireOneOf } from '../../src/errors/require-one-of.js';

test('a word of the list passes', () => {
  expect(() => requireOneOf('backing', 'open', ['rigid', 'open'])).not.toThrow();
});

test.each([
  ['hard', 'backing is "hard", expected rigid, open or wall'],
  ['toString', 'backing is "toString", expected rigid, open or wall'],
  [undefined, 'backing is undefined, expected rigid, open or wall'],
  [3, 'backing is 3, expected rigid, open or wall'],
])('%s is told with argument and allowed words', (value, message) => {
  expect(() => requireOneOf('backing', value, ['rigid', 'open', 'wall'])).toThrow(
    new ArgumentError('', 0, '').constructor as ErrorConstructor,
  );
  expect(() => requireOneOf('backing', value, ['rigid', 'open', 'wall'])).toThrow(message);
});
