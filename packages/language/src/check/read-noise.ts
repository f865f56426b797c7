import type { NoiseSource } from '../model/booth-spec.js';
import type { Named } from '../model/sourced.js';
import type { Statement } from '../syntax/tree.js';
import { type BlockReader, wordIn } from './block-reader.js';
import { type CheckContext, keep } from './context.js';
import { eachNamed } from './each-named.js';
import { readHours } from './read-hours.js';
import { type NumberRule, numberIn, readBands } from './read-value.js';

export function readSources(reader: BlockReader): NoiseSource[] {
  return eachNamed(reader, ['noise', 'impact'], (statement, named) => readSource(reader.ctx, statement, named));
}

function readSource(ctx: CheckContext, statement: Statement, named: Named): NoiseSource | undefined {
  const label = `${statement.fact!.keyword} ${named.name}`;
  const hours = readHours(ctx, statement, label);
  if (statement.fact!.keyword === 'impact') return { ...named, kind: 'impact', hours };
  const rule: NumberRule = {
    dimension: 'level',
    noun: 'a noise level',
    label,
    fact: 'noise',
    usual: { min: -20, max: 140, text: 'levels in rooms lie between -20 and 140 dB' },
  };
  if (statement.slots.has('levels')) {
    const levels = readBands(ctx, statement, 'levels', { ...rule, noun: 'a band level', weightings: ['none', 'Z'] });
    return levels && { ...named, kind: 'bands', levels, hours };
  }
  const reading = numberIn(ctx, statement, 'reading', { ...rule, weightings: ['A', 'C', 'none', 'Z'] });
  const shape = wordIn(statement, 'shape');
  if (!reading?.level || !shape) return undefined;
  return {
    ...named,
    kind: 'shaped',
    hours,
    reading: { ...reading.sourced, value: reading.level },
    shape: keep(ctx, `${label}: like`, 'noise', 'text', {
      value: shape.word,
      origin: { kind: 'given' },
      range: shape.range,
      text: shape.word,
    }),
  };
}
