import { expect, it } from 'vitest';
import { badInputs } from './bad-inputs.js';
import { checkText } from './check-text.js';
import { renderProblems } from './render-problems.js';

it('every message reads as the snapshot shows it', async () => {
  const rendered = badInputs.map(({ what, files }) => {
    const result = checkText(files);
    expect(result.problems.length, what).toBeGreaterThan(0);
    return `== ${what}\n\n${renderProblems(result)}\n`;
  });
  await expect(rendered.join('\n')).toMatchFileSnapshot('./messages.snap.txt');
});

it('no message ends with a full stop or is empty', () => {
  for (const { what, files } of badInputs) {
    for (const { message, hint } of checkText(files).problems) {
      for (const text of [message, ...(hint === undefined ? [] : [hint])]) {
        expect(text, what).not.toMatch(/\.$|^\s*$/);
      }
    }
  }
});

it('each bad input gives as many messages as it has mistakes', () => {
  const counts = badInputs.map(
    ({ what, files, mistakes = 1 }) => [what, checkText(files).problems.length, mistakes] as const,
  );
  expect(counts.filter(([, found, expected]) => found !== expected)).toEqual([]);
});
