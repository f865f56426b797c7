import { describe, expect, test } from 'vitest';
import { changedPredictions, unannounced } from './changed-predictions.js';

const name = '@boothwright/acoustics';
const changeset = (step: string, words: string) => ({
  file: 'a.md',
  text: `---\n"${name}": ${step}\n---\n\n${words}\n`,
});

describe('changed predictions', () => {
  test('are values that differ by more than a part in 1e9, and values that are gone', () => {
    expect(changedPredictions({ 'a/x': 50 }, { 'a/x': 50 + 1e-9 })).toEqual([]);
    expect(changedPredictions({ 'a/x': 50 }, { 'a/x': 50.0001 })).toEqual(['a/x']);
    expect(changedPredictions({ 'a/x': [1, null] }, { 'a/x': [1, 2] })).toEqual(['a/x']);
    expect(changedPredictions({ 'a/x': 1, 'a/y': 2 }, { 'a/y': 2, 'a/z': 3 })).toEqual(['a/x']);
  });

  test('need a changeset of a minor step or more that names them', () => {
    expect(unannounced(['a/x'], [], name)).toEqual(['a/x']);
    expect(unannounced(['a/x'], [changeset('patch', '`a/x` is larger')], name)).toEqual(['a/x']);
    expect(unannounced(['a/x'], [changeset('minor', 'all is better')], name)).toEqual(['a/x']);
    expect(unannounced(['a/x'], [changeset('minor', '`a/x` is larger')], name)).toEqual([]);
    expect(unannounced(['a/x', 'a/y'], [changeset('major', 'all of `a`')], name)).toEqual([]);
    expect(unannounced(['a/x'], [changeset('minor', '`a/x`')], '@boothwright/language')).toEqual(['a/x']);
  });
});
