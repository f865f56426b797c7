import type { PreparedStack } from './prepared-stack.js';
import type { WaveBlock } from './wave-block.js';

/** What follows waves through stacks, with the working memory in which it does so. */
export type WaveKernel = {
  readonly block: WaveBlock;
  /**
   * Follows the first `count` waves of the block through the stack, from the far side to the near side. `first` and
   * `second` name operations whose velocity is kept; -1 for none. What stands in the block behind the waves may change.
   */
  readonly propagateBlock: (stack: PreparedStack, count: number, first?: number, second?: number) => void;
};
