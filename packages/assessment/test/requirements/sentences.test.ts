import { expect, it } from 'vitest';
import { marginWords } from '../../src/requirements/sentences.js';

it('marginWords(margin, unit) says how much there is to spare or too much', () => {
  expect(marginWords(4.3, 'dB')).toBe('4.3 dB to spare');
  expect(marginWords(-4.3, 'dB', 1, 'short')).toBe('4.3 dB short');
});

it('marginWords(margin, unit) has one point and two points', () => {
  expect(marginWords(1, 'points', 0)).toBe('1 point to spare');
  expect(marginWords(-1, 'points', 0, 'short')).toBe('1 point short');
  expect(marginWords(0, 'points', 0)).toBe('0 points to spare');
  expect(marginWords(2, 'points', 0)).toBe('2 points to spare');
});

it('marginWords(margin, unit) never prints a margin that is there as none', () => {
  expect(marginWords(-0.02, 'kg')).toBe('0.02 kg too much');
  expect(marginWords(0.004, 'kPa')).toBe('0.004 kPa to spare');
  expect(marginWords(0, 'kg')).toBe('0.0 kg to spare');
});
