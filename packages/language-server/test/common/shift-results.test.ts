import { describe, expect, it } from 'vitest';
import { shiftResults } from '../../src/common/shift-results.js';

const place = (file: string, from: number, to: number) => ({ file, from, to });

describe('shiftResults', () => {
  it('moves places behind the change and leaves those before it', () => {
    const before = 'aaa\nbbb\nccc';
    const after = 'aaa\nbXXbb\nccc';
    const results = { first: place('t', 0, 3), last: place('t', 8, 11), whole: place('t', 0, 11) };
    expect(shiftResults(results, 't', before, after)).toEqual({
      first: place('t', 0, 3),
      last: place('t', 10, 13),
      whole: place('t', 0, 13),
    });
  });

  it('shrinks a deleted place to nothing', () => {
    const { gone } = shiftResults({ gone: place('t', 4, 7) }, 't', 'aaa\nbbb\nccc', 'aaa\n\nccc');
    expect(gone.from).toBe(gone.to);
  });

  it('hands on what does not move as it is', () => {
    const results = { before: { at: place('t', 0, 2), curve: [1, 2] }, behind: { at: place('t', 5, 6) } };
    const shifted = shiftResults(results, 't', 'abc def', 'abc X def');
    expect(shifted.before).toBe(results.before);
    expect(shifted.behind).toEqual({ at: place('t', 7, 8) });
  });

  it('leaves places in other files and plain figures as they are', () => {
    const results = { other: place('u', 4, 7), figures: [1, null, 3], nested: [{ at: place('t', 2, 3) }] };
    expect(shiftResults(results, 't', 'abc', 'Xabc')).toEqual({
      other: place('u', 4, 7),
      figures: [1, null, 3],
      nested: [{ at: place('t', 3, 4) }],
    });
  });
});
