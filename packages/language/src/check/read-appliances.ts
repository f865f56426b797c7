import type { Appliance } from '../model/booth-spec.js';
import { type BlockReader, wordIn } from './block-reader.js';
import { headerOf, keep } from './context.js';
import { eachNamed } from './each-named.js';
import { wordOf } from './read-value.js';

export function readAppliances(reader: BlockReader): Appliance[] {
  const { ctx } = reader;
  return eachNamed(reader, ['appliance'], (statement, named) => {
    const flue = wordIn(statement, 'flue');
    const value = (flue?.word ?? 'unknown') as Appliance['flue']['value'];
    return {
      ...named,
      flue: keep(ctx, `appliance ${named.name}: flue`, 'appliance', 'text', {
        value,
        origin: { kind: 'given' },
        range: flue?.range ?? headerOf(statement),
        text: value,
      }),
      where: wordOf<'same-room' | 'next-room' | 'elsewhere'>(ctx, statement, 'where', `appliance ${named.name}: where`),
    };
  });
}
