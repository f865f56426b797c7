import { describe, expect, it } from 'vitest';
import { shiftResults, withParts } from '../../src/common/shift-results.js';

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

  it('carries a part over several changes, whether it was looked at in between or not', () => {
    const texts = ['aaa\nbbb\nccc', 'aXaa\nbbb\nccc', 'aXaa\nbYYbb\nccc', 'aXaa\nbb\nccc', 'Zccc', 'aaa\nbbb\nccc'];
    const results = { seen: [{ at: place('t', 0, 3) }, { at: place('t', 4, 7) }], unseen: { at: place('t', 8, 11) } };
    let lazy = results;
    let seen = results.seen;
    let unseen = results.unseen;
    texts.slice(1).forEach((text, index) => {
      lazy = shiftResults(lazy, 't', texts[index]!, text);
      // The same by single steps on values of their own.
      seen = shiftResults({ seen }, 't', texts[index]!, text).seen;
      unseen = shiftResults({ unseen }, 't', texts[index]!, text).unseen;
      expect(lazy.seen).toEqual(seen);
    });
    expect(lazy).toEqual({ seen, unseen });
    expect({ ...lazy }).toEqual({ seen, unseen });
  });

  it('takes other parts, which moves with the changes after it', () => {
    const results = { first: { at: place('t', 1, 2) }, last: { at: place('t', 2, 3) } };
    const once = withParts(shiftResults(results, 't', 'abc', 'Xabc'), { first: { at: place('t', 0, 1) } });
    expect(once).toEqual({ first: { at: place('t', 0, 1) }, last: { at: place('t', 3, 4) } });
    const twice = shiftResults(once, 't', 'Xabc', 'YXabc');
    expect(twice).toEqual({ first: { at: place('t', 0, 2) }, last: { at: place('t', 4, 5) } });
    expect(withParts(results, { first: { at: place('t', 0, 0) } }).first.at.to).toBe(0);
  });
});
