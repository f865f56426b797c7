import { expect, it } from 'vitest';
import { createMemo } from '../../src/memo/memo.js';

it('memo.of(key, compute) computes a key once', () => {
  const memo = createMemo();
  let calls = 0;
  const compute = () => {
    calls += 1;
    return 'a';
  };
  expect(memo.of('k', compute)).toBe('a');
  expect(memo.of('k', compute)).toBe('a');
  expect(calls).toBe(1);
  expect(memo.computed).toBe(1);
});

it('memo.of(key, compute) forgets the entry that was not used for longest', () => {
  const memo = createMemo(2);
  memo.of('a', () => 1);
  memo.of('b', () => 2);
  memo.of('a', () => 0);
  memo.of('c', () => 3);
  expect(memo.size).toBe(2);
  expect(memo.of('a', () => -1)).toBe(1);
  expect(memo.of('b', () => -2)).toBe(-2);
});

it('memo.reserve(entries) makes room within bounds and takes it back', () => {
  const memo = createMemo(2);
  const fill = (count: number): number => {
    for (let key = 0; key < count; key++) memo.of(`k ${key}`, () => key);
    return memo.size;
  };
  memo.reserve(4);
  expect(fill(4)).toBe(4);
  memo.reserve(1000);
  expect(fill(50)).toBe(10);
  memo.reserve(0);
  expect(fill(50)).toBe(2);
});
