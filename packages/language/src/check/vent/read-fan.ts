import type { Fan } from '../../model/vent-parts.js';
import { type BlockReader, factOf, readBlock } from '../block-reader.js';
import { fallback, headerOf, wholeOf } from '../context.js';
import { factChoice, factNumber, numberIn, readBands, wordOf } from '../read-value.js';
import { readFanCurve } from './read-fan-curve.js';

export function readFan(reader: BlockReader): Fan | undefined {
  const { ctx } = reader;
  const statement = factOf(reader, 'fan');
  if (!statement) return undefined;
  const label = `${reader.label}: fan`;
  const flow = numberIn(ctx, statement, 'flow', {
    dimension: 'flow',
    noun: 'the flow of a fan',
    label,
    fact: 'fan',
    aboveZero: true,
    usual: { min: 0.0002, max: 0.5, text: 'booth fans move 0.2 to 500 L/s' },
  });
  const soundPower = readBands(ctx, statement, 'power', {
    dimension: 'level',
    noun: 'a sound power level',
    label: `${label} sound power`,
    fact: 'fan',
    weightings: ['none'],
    usual: { min: -10, max: 120, text: 'fans have up to 120 dB' },
  });
  const direction = wordOf<'supply' | 'exhaust'>(ctx, statement, 'direction', `${label} direction`);
  const block = readBlock(ctx, statement, `the fan of ${reader.label}`);
  const curve = readFanCurve(block, flow?.sourced);
  const lowSpeed =
    factNumber(block, 'low', {
      dimension: 'share',
      noun: 'the low speed of a fan',
      aboveZero: true,
      max: 1,
      usual: { min: 0.15, max: 1, text: 'few fans start below 15 % of full speed' },
    })?.sourced ?? fallback<number>(ctx, 'fan-low-speed', `${label} low`, 'share', headerOf(statement));
  const place = factChoice<'outside' | 'in-wall' | 'inside'>(block, 'place');
  return flow && { range: wholeOf(statement), direction, flow: flow.sourced, soundPower, curve, lowSpeed, place };
}
