import type { Sourced } from '../../model/sourced.js';
import type { FanPoint } from '../../model/vent-parts.js';
import type { Expression, Slot } from '../../syntax/tree.js';
import { type BlockReader, factOf, slotOf } from '../block-reader.js';
import { complain, hearing, rangeIn, slotRange, textOf, warn } from '../context.js';
import { evaluateHere, readNumber } from '../read-value.js';
import { valueDimension } from '../value.js';

/**
 * Points of a fan's curve by rising flow and falling pressure; undefined when there are fewer than two, or when they do
 * not fall, since nothing can be worked out from such a curve.
 */
export function readFanCurve(reader: BlockReader, flow: Sourced<number> | undefined): readonly FanPoint[] | undefined {
  const statement = factOf(reader, 'curve');
  const slot = statement && slotOf(statement, 'points', 'pairs');
  if (!statement || !slot) return undefined;
  const ctx = hearing(reader.ctx, statement);
  const file = slot.file ?? statement.file;
  const label = `${reader.label}: curve`;
  const points: FanPoint[] = [];
  if (reportSwapped(reader, slot, file)) return undefined;
  for (const pair of slot.pairs) {
    const at = readNumber(ctx, pair.first, file, { kind: 'given' }, { ...FLOW, label, fact: 'curve' });
    const pressure = readNumber(ctx, pair.second, file, { kind: 'given' }, { ...PRESSURE, label, fact: 'curve' });
    if (!at || !pressure) return undefined;
    const before = points.at(-1);
    if (before && !follows(before, { flow: at.sourced, pressure: pressure.sourced })) return undefined;
    points.push({ flow: at.sourced, pressure: pressure.sourced });
  }
  if (points.length < 2) {
    complain(ctx, 'fan-curve-short', slotRange(statement, slot), 'a fan curve of one point is no curve', {
      hint: 'give at least two, such as the pressure without flow and the flow without pressure',
    });
    return undefined;
  }
  const last = points.at(-1)!;
  if (flow && flow.value > last.flow.value * 1.001)
    warn(
      ctx,
      'fan-beyond-curve',
      flow.range,
      `the fan is said to move ${textOf(ctx, flow.range)}, but its curve ends at ${textOf(ctx, last.flow.range)}`,
      { hint: 'check the two', related: [{ range: last.flow.range, message: 'the curve ends here' }] },
    );
  return points;

  function follows(before: FanPoint, point: FanPoint): boolean {
    const wrong = (range: FanPoint['flow']['range'], message: string, related: FanPoint['flow']['range']): false => {
      complain(ctx, 'fan-curve-not-falling', range, message, {
        hint: 'give the points by rising flow; the pressure falls from one to the next',
        related: [{ range: related, message: 'the point before' }],
      });
      return false;
    };
    const said = (value: Sourced<number>): string => `\`${textOf(ctx, rangeIn(file, value.range))}\``;
    if (point.flow.value <= before.flow.value)
      return wrong(
        point.flow.range,
        `the flows of a fan curve rise, but ${said(point.flow)} follows ${said(before.flow)}`,
        before.flow.range,
      );
    if (point.pressure.value >= before.pressure.value)
      return wrong(
        point.pressure.range,
        `the pressures of a fan curve fall as the flow rises, but ${said(point.pressure)} follows ${said(before.pressure)}`,
        before.pressure.range,
      );
    return true;
  }
}

/** Pressure before flow in every point is one mistake. */
function reportSwapped({ ctx }: BlockReader, slot: Extract<Slot, { kind: 'pairs' }>, file: string): boolean {
  const quiet = { ...ctx, problems: [] };
  const dimensionOf = (expression: Expression): string | undefined => {
    const value = evaluateHere(quiet, expression, file);
    return value && valueDimension(value);
  };
  const [pair] = slot.pairs;
  if (!pair || dimensionOf(pair.first) !== 'pressure' || dimensionOf(pair.second) !== 'flow') return false;
  const said = (part: Expression): string => textOf(ctx, rangeIn(file, part));
  complain(ctx, 'fan-curve-swapped', rangeIn(file, pair), 'a point of a fan curve is its flow and then its pressure', {
    hint: `write \`${said(pair.second)} ${said(pair.first)}\`, and the others so too`,
  });
  return true;
}

const FLOW = {
  dimension: 'flow',
  noun: 'the flow of a fan',
  min: 0,
  usual: { min: 0, max: 1, text: 'booth fans move up to 1000 L/s' },
} as const;
const PRESSURE = {
  dimension: 'pressure',
  noun: 'the pressure of a fan',
  min: 0,
  usual: { min: 0, max: 2000, text: 'booth fans make up to 2 kPa' },
} as const;
