import { describe, expect, it } from 'vitest';
import { checkText } from '../check-text.js';

const text = 'use catalog\nassembly wall { osb 9 mm; air 1.5 m; nowhere 9 mm }\n';
const told = (severities: Record<string, 'error' | 'warning' | 'hint' | 'off'>) =>
  checkText(text, { severities }).problems.map(({ id, severity }) => [id, severity]);

describe('settings of severity', () => {
  it('change how a warning is told, or leave it out', () => {
    expect(told({ 'value-unusual': 'hint' })[0]).toEqual(['value-unusual', 'hint']);
    expect(told({ 'value-unusual': 'error' })[0]).toEqual(['value-unusual', 'error']);
    expect(told({ 'value-unusual': 'off' }).map(([id]) => id)).toEqual(['unknown-name']);
  });

  it('leave an error an error', () => {
    expect(told({ 'unknown-name': 'off' })).toEqual([
      ['value-unusual', 'warning'],
      ['unknown-name', 'error'],
    ]);
  });
});
