import type { Passage } from '../model/surroundings.js';
import { type BlockReader, readBlock } from './block-reader.js';
import { fallback, headerOf, warn } from './context.js';
import { eachNamed } from './each-named.js';
import { factChoice, factNumber } from './read-value.js';

export function readPassages(outer: BlockReader): Passage[] {
  const { ctx } = outer;
  return eachNamed(outer, ['passage'], (statement, named) => {
    const reader = readBlock(ctx, statement, `passage ${named.name}`);
    const wide = (keyword: 'width' | 'onto', noun: string): ReturnType<typeof factNumber> =>
      factNumber(reader, keyword, {
        dimension: 'length',
        noun,
        aboveZero: true,
        max: 30,
        usual: { min: 0.5, max: 5, text: 'stairs, landings and corridors are 0.5 to 5 m wide' },
      });
    const width = wide('width', 'the width of a passage')?.sourced;
    const headroom = factNumber(reader, 'headroom', {
      dimension: 'length',
      noun: 'headroom',
      aboveZero: true,
      max: 30,
      usual: { min: 1.5, max: 6, text: 'people pass below 1.5 to 6 m' },
    })?.sourced;
    const turn =
      factChoice<Passage['turn']['value']>(reader, 'turn') ??
      fallback<'none'>(ctx, 'passage-turn', `${reader.label}: turn`, 'text', headerOf(statement));
    const onto = wide('onto', 'the width after a turn')?.sourced;
    if (onto && turn.value === 'none')
      warn(ctx, 'fact-without-effect', onto.range, '`onto` says nothing in a passage without a turn', {
        hint: 'add `turn quarter` or `turn half`',
      });
    return width && { ...named, width, headroom, turn, onto };
  });
}
