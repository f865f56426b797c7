import { describe, expect, it } from 'vitest';
import { isSeverityLevel, severityComplaint, severityLevels } from '../../src/problems/severity-setting.js';

describe('severityComplaint', () => {
  it('says nothing of what can be followed', () => {
    for (const level of severityLevels) expect(severityComplaint('value-unusual', level)).toBeUndefined();
    expect(severityComplaint('unknown-name', 'error')).toBeUndefined();
  });

  it('names an identifier that is near', () => {
    expect(severityComplaint('value-unusal', 'off')).toBe(
      'found no problem `value-unusal`; did you mean `value-unusual`?',
    );
    expect(severityComplaint('constructor', 'off')).toBe('found no problem `constructor`');
  });

  it('takes the identifiers of the caller', () => {
    expect(severityComplaint('no-fresh-air', 'off')).toContain('found no problem');
    expect(severityComplaint('no-fresh-air', 'off', new Set(['no-fresh-air']))).toBeUndefined();
  });

  it('lists the levels when the word is none of them', () => {
    expect(severityComplaint('value-unusual', 'loud')).toBe(
      '`value-unusual` is told as one of error, warning, hint, off; found `loud`',
    );
    expect(severityComplaint('value-unusual', '')).toMatch(/found nothing$/);
    expect(severityComplaint('value-unusual', null)).toMatch(/found null$/);
    expect(severityComplaint('value-unusual', 3)).toMatch(/found a value that is no word \(number\)$/);
  });

  it('keeps an error an error', () => {
    expect(severityComplaint('unknown-name', 'off')).toMatch(/^`unknown-name` is always an error/);
  });
});

it('knows a level when it sees one', () => {
  expect(['off', 'hint', 'information', 0, undefined].map(isSeverityLevel)).toEqual([true, true, false, false, false]);
});
