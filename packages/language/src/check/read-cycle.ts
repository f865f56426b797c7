import type { Session } from '../model/booth-spec.js';
import type { Sourced } from '../model/sourced.js';
import { type BlockReader, factOf } from './block-reader.js';
import { fallback, headerOf, warn } from './context.js';
import { numberIn, wordOf } from './read-value.js';

/** Takes and rests; undefined for one unbroken stretch, or when the line cannot be read. */
export function readCycle(reader: BlockReader, length: Sourced<number>): Session['cycle'] {
  const { ctx, label } = reader;
  const statement = factOf(reader, 'take');
  if (!statement) return undefined;
  const time = (slot: 'take' | 'rest', most: number, text: string): Sourced<number> | undefined =>
    numberIn(ctx, statement, slot, {
      dimension: 'time',
      noun: `the length of a ${slot}`,
      label: `${label}: ${slot}`,
      fact: 'take',
      aboveZero: true,
      usual: { min: 10, max: most, text },
    })?.sourced;
  const take = time('take', 14_400, 'takes last between 10 s and 4 h');
  const rest = time('rest', 14_400, 'rests last between 10 s and 4 h');
  if (!take || !rest || !statement.complete) return undefined;
  if (take.value > length.value)
    warn(ctx, 'take-beyond-session', take.range, `a take of \`${take.text ?? ''}\` is longer than the session`, {
      hint: 'lengthen the session, or leave `take` out for one unbroken stretch',
      related: [{ range: length.range, message: 'the session is this long' }],
    });
  const fan =
    wordOf<'on' | 'off'>(ctx, statement, 'fan', `${label}: fan in takes`) ??
    fallback<'on'>(ctx, 'take-fan', `${label}: fan in takes`, 'text', headerOf(statement));
  return { take, rest, fan };
}
