import { expect, it } from 'vitest';
import { insteadOf } from '../../src/text/instead-of.js';

it('insteadOf(name, after, before) never gives the same figure twice', () => {
  expect(insteadOf('STC', 35, 34)).toBe('STC 35 instead of 34');
  expect(insteadOf('STC', 35, 35)).toBe('STC 35 as before');
});
