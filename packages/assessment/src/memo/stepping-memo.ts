import type { Memo } from './memo.js';

/** The same memory; whoever looks something up is a step further. */
export function steppingMemo(memo: Memo, step: () => void): Memo {
  return {
    of(key, compute) {
      step();
      return memo.of(key, compute);
    },
    reserve: (entries) => memo.reserve(entries),
    get size() {
      return memo.size;
    },
    get computed() {
      return memo.computed;
    },
    get computedByKind() {
      return memo.computedByKind;
    },
  };
}
