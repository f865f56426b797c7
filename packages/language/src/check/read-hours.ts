import type { Hours } from '../model/booth-spec.js';
import type { ClockNode, Statement } from '../syntax/tree.js';
import { factOf, readBlock, slotOf } from './block-reader.js';
import { type CheckContext, complain, keep, rangeIn, slotRange, textOf } from './context.js';

/** When a noise is there; undefined, at any hour, when its block says nothing. */
export function readHours(ctx: CheckContext, noise: Statement, label: string): Hours {
  if (!noise.block) return undefined;
  const statement = factOf(readBlock(ctx, noise, label), 'hours');
  const slot = statement && slotOf(statement, 'value', 'hours');
  if (!statement || !slot) return undefined;
  const file = slot.file ?? statement.file;
  const spans = slot.spans.flatMap(({ begins, ends, ...span }) => {
    if (begins.seconds % DAY !== ends.seconds % DAY || isWholeDay(begins, ends))
      return [{ from: begins.seconds % DAY, to: ends.seconds }];
    const times =
      begins.text === ends.text
        ? `\`${begins.text}\` is`
        : `\`${begins.text}\` and \`${ends.text}\` are the same midnight,`;
    complain(ctx, 'hours-empty', rangeIn(file, span), `${times} both the beginning and the end`, {
      hint: 'write `0:00 to 24:00`, or leave `hours` out, when the noise is there at any hour',
    });
    return [];
  });
  if (spans.length === 0) return undefined;
  const range = slotRange(statement, slot);
  return keep(ctx, `${label}: hours`, 'hours', 'text', {
    value: spans,
    origin: { kind: 'given' },
    range,
    text: textOf(ctx, range),
  });
}

function isWholeDay(begins: ClockNode, ends: ClockNode): boolean {
  return begins.seconds === 0 && ends.seconds === DAY;
}

/** s */
const DAY = 86_400;
