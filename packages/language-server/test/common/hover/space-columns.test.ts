import { expect, it } from 'vitest';
import { spaceColumns } from '../../../src/common/hover/space-columns.js';

it('puts space before every cell but the first, in head and rows', () => {
  expect(spaceColumns('text\n\n| a | b |\n| :-- | --: |\n| 1 \\| 2 | 3 |')).toBe(
    'text\n\n| a | &nbsp;&nbsp;&nbsp;b |\n| :-- | --: |\n| 1 \\| 2 | &nbsp;&nbsp;&nbsp;3 |',
  );
});

it('leaves what is no table alone', () => {
  expect(spaceColumns('a | b\n\n`| c |`')).toBe('a | b\n\n`| c |`');
});
