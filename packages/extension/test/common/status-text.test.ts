import { expect, it } from 'vitest';
import { statusDetails, statusText } from '../../src/common/status-text.js';

const headline = { booth: 'cabin', text: '3 of 5 met · 21 dBA inside', missed: ['missed: mass <= 10 kg'] };

it('says what the booth comes to', () => {
  expect(statusText({ ...headline, state: 'fresh' })).toBe('$(mic) cabin: 3 of 5 met · 21 dBA inside');
  expect(statusDetails({ ...headline, state: 'fresh' })).toEqual(['missed: mass <= 10 kg']);
});

it('marks numbers of an earlier text by a word and a sign, not by colour alone', () => {
  expect(statusText({ ...headline, state: 'stale' })).toBe('$(history) cabin: was 3 of 5 met · 21 dBA inside');
  expect(statusDetails({ ...headline, missed: [], state: 'stale' })[0]).toMatch(/before the text was broken/);
  expect(statusText({ ...headline, state: 'pending' })).toMatch(/^\$\(loading~spin\)/);
});

it('keeps short', () => {
  expect(statusText({ ...headline, text: 'x'.repeat(200), state: 'fresh' }).length).toBeLessThan(110);
});
