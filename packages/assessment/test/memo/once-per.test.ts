import { describe, expect, it } from 'vitest';
import { keyText, oncePer, oncePerPair } from '../../src/memo/once-per.js';

describe('oncePer(compute)', () => {
  it('computes once for each thing, also where the answer is undefined', () => {
    let times = 0;
    const of = oncePer((_: object) => {
      times += 1;
      return undefined;
    });
    const one = {};
    of(one);
    of(one);
    of({});
    expect(times).toBe(2);
  });

  it('computes once for each pair', () => {
    let times = 0;
    const of = oncePerPair((one: readonly number[], other: readonly number[]) => {
      times += 1;
      return [...one, ...other];
    });
    const one = [1];
    const other = [2];
    expect(of(one, other)).toBe(of(one, other));
    expect(of(other, one)).toEqual([2, 1]);
    expect(times).toBe(2);
  });

  it('writes things of the same figures alike', () => {
    expect(keyText({ a: 1 })).toBe(keyText({ a: 1 }));
  });
});
