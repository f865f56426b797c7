import type { BlockName, Fact } from '../vocabulary/shape.js';
import { vocabulary } from '../vocabulary/vocabulary.js';

/** Facts by first word, per block. */
const factIndex = new Map<BlockName, ReadonlyMap<string, readonly Fact[]>>(
  vocabulary.map((block) => {
    const index = new Map<string, Fact[]>();
    for (const fact of block.facts) {
      const word = fact.keyword.split(' ')[0]!;
      index.set(word, [...(index.get(word) ?? []), fact]);
    }
    return [block.name, index];
  }),
);

export function factsStartingWith(block: BlockName, word: string): readonly Fact[] {
  return (word && factIndex.get(block)!.get(word)) || [];
}
