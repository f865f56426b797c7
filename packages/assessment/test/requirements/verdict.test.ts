import { describe, expect, it } from 'vitest';
import { judged } from '../../src/requirements/verdict.js';
import { given, requirement } from '../fixtures/spec-builder.js';

const within = (sense: 'at-most' | 'at-least', limit: number, low: number, high: number) =>
  judged({
    requirement: requirement({ kind: 'co2', text: 'require co2 <= 30 ppm', limit: given(limit) }),
    value: { value: (low + high) / 2, low, high, basis: 'invented' },
    limit,
    unit: '',
    sense,
    explanation: '',
  }).withinRange;

describe('judged: whether the limit lies within the range', () => {
  it('is so when one end of the range meets the limit and the other misses it', () => {
    expect(within('at-least', 30, 10, 31)).toBe(true);
    expect(within('at-most', 30, 10, 31)).toBe(true);
    expect(within('at-least', 30, 10, 29)).toBe(false);
    expect(within('at-most', 30, 31, 40)).toBe(false);
  });

  it('counts an end exactly at the limit as met', () => {
    expect(within('at-least', 30, 10, 30)).toBe(true);
    expect(within('at-least', 30, 30, 40)).toBe(false);
    expect(within('at-most', 30, 30, 40)).toBe(true);
    expect(within('at-most', 30, 10, 30)).toBe(false);
  });

  it('is not so without a range', () => {
    expect(within('at-least', 30, 30, 30)).toBe(false);
    expect(within('at-most', 30, 30, 30)).toBe(false);
  });
});
