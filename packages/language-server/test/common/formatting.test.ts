import { format } from '@boothwright/language';
import { expect, it } from 'vitest';
import { formatting } from '../../src/common/formatting.js';
import { formatted, smallBooth, viewOf } from '../helpers/index.js';

const untidy = 'use catalog\nassembly a   {\n gypsum-board    12.5 mm   # a remark\n      air 50 mm\n}\n';

it('comes to the one canonical layout', () => {
  expect(formatted(untidy)).toBe(format(untidy));
  expect(formatted(untidy)).not.toBe(untidy);
  expect(formatted(smallBooth)).toBe(format(smallBooth));
});

it('touches only what changes', () => {
  const [edit] = formatting(viewOf(untidy));
  expect(edit?.range.start.line).toBe(1);
});

it('has nothing to do on a formatted text', () => {
  expect(formatting(viewOf(format(untidy)))).toEqual([]);
});
