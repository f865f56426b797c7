import type { Appliance, NoiseSource, Site, Size2, Size3 } from '../model/booth-spec.js';
import type { SourceRange } from '../model/sourced.js';
import type { Statement } from '../syntax/tree.js';
import { type BlockReader, factOf, factsOf, nameOf, readBlock, slotOf, titleOf, wordIn } from './block-reader.js';
import { type CheckContext, complain, fallback, headerOf, keep, slotRange, wholeOf } from './context.js';
import { factNumberOr, type NumberRule, numberIn, readBands } from './read-value.js';

export function readSite(ctx: CheckContext, statement: Statement): Site {
  const reader = readBlock(ctx, statement, 'site');
  const titled = titleOf(statement) as { title?: string };
  return {
    title: titled.title,
    range: wholeOf(statement),
    room: readSize3(reader, 'room'),
    reverberation: factNumberOr(reader, 'reverberation', 'room-reverberation', {
      dimension: 'time',
      noun: 'a reverberation time',
      aboveZero: true,
      usual: { min: 0.05, max: 10, text: 'rooms have 0.05 to 10 s' },
    }),
    doorway: readSize2(reader, 'doorway'),
    lift: readSize3(reader, 'lift'),
    floor: readFloor(reader),
    temperature: factNumberOr(reader, 'temperature', 'air-temperature', {
      dimension: 'temperature',
      noun: 'a temperature',
      min: -50,
      max: 60,
      usual: { min: 0, max: 45, text: 'rooms have 0 to 45 degC' },
    }),
    humidity: factNumberOr(reader, 'humidity', 'air-humidity', {
      dimension: 'share',
      noun: 'relative humidity',
      min: 0,
      max: 1,
    }),
    sources: readSources(reader),
    appliances: readAppliances(reader),
    joists: undefined,
    coldSurface: undefined,
    outdoorAir: fallback<number>(ctx, 'outdoor-air', 'site: outdoor-air', 'concentration', headerOf(statement)),
    freshAir: undefined,
    occupants: fallback<number>(ctx, 'occupants', 'site: occupants', 'count', headerOf(statement)),
    alarm: undefined,
    passages: [],
    obstacles: [],
    neighbours: [],
  };
}

const SIZE_RULE: Omit<NumberRule, 'label' | 'fact' | 'noun'> = {
  dimension: 'length',
  aboveZero: true,
  usual: { min: 0.05, max: 30, text: 'sizes lie between 50 mm and 30 m' },
};

/** A room may be a hall; nothing else that has a size here is larger than this, in metres. */
const LARGEST = { max: 30, maxText: 'it must be smaller than 30 m' };
const LARGEST_ROOM = { max: 1000, maxText: 'it must be smaller than 1000 m' };

function side(ctx: CheckContext, statement: Statement, label: string, axis: string): ReturnType<typeof numberIn> {
  const keyword = statement.fact!.keyword;
  return numberIn(ctx, statement, axis, {
    ...SIZE_RULE,
    ...(keyword === 'room' ? LARGEST_ROOM : LARGEST),
    noun: `a ${axis}`,
    label: `${label}: ${keyword} ${axis}`,
    fact: keyword,
  });
}

export function readSize3(reader: BlockReader, keyword: string): Size3 | undefined {
  const statement = factOf(reader, keyword);
  if (!statement) return undefined;
  const [width, depth, height] = ['width', 'depth', 'height'].map((axis) =>
    side(reader.ctx, statement, reader.label, axis),
  );
  return width && depth && height && { width: width.sourced, depth: depth.sourced, height: height.sourced };
}

export function readSize2(reader: BlockReader, keyword: string): Size2 | undefined {
  const statement = factOf(reader, keyword);
  if (!statement) return undefined;
  const [width, height] = ['width', 'height'].map((axis) => side(reader.ctx, statement, reader.label, axis));
  return width && height && { width: width.sourced, height: height.sourced };
}

function readFloor(reader: BlockReader): Site['floor'] {
  const statement = factOf(reader, 'floor');
  const kind = statement && slotOf(statement, 'kind', 'word');
  if (!statement || !kind) return undefined;
  const limit = numberIn(reader.ctx, statement, 'limit', {
    dimension: 'pressure',
    noun: 'a floor load',
    label: 'site: floor limit',
    fact: 'floor',
    aboveZero: true,
    usual: { min: 200, max: 50_000, text: 'floors are designed for 0.2 to 50 kPa' },
    isLoad: true,
  });
  const range = slotRange(statement, kind);
  return {
    kind: keep(reader.ctx, 'site: floor', 'floor', 'text', {
      value: kind.word as 'timber' | 'concrete' | 'unknown',
      origin: { kind: 'given' },
      range,
      text: kind.word,
    }),
    limit: limit?.sourced,
  };
}

function readSources(reader: BlockReader): NoiseSource[] {
  const sources: NoiseSource[] = [];
  const places = new Map<string, SourceRange>();
  for (const statement of reader.header.block?.statements ?? []) {
    if (statement.fact?.keyword !== 'noise' && statement.fact?.keyword !== 'impact') continue;
    const named = nameOf(statement);
    if (!named) continue;
    const twin = places.get(named.name);
    if (twin) {
      complain(reader.ctx, 'name-twice', named.nameRange, `a noise called \`${named.name}\` is already there`, {
        related: [{ range: twin, message: 'the first stands here' }],
      });
      continue;
    }
    places.set(named.name, named.nameRange);
    const source = readSource(reader.ctx, statement, { ...named, ...titleOf(statement), range: wholeOf(statement) });
    if (source) sources.push(source);
    else reader.ctx.broken.add(named.name);
  }
  return sources;
}

function readSource(
  ctx: CheckContext,
  statement: Statement,
  named: Omit<Extract<NoiseSource, { kind: 'impact' }>, 'kind' | 'hours'>,
): NoiseSource | undefined {
  if (statement.fact!.keyword === 'impact') return { ...named, kind: 'impact', hours: undefined };
  const label = `noise ${named.name}`;
  const rule: NumberRule = {
    dimension: 'level',
    noun: 'a noise level',
    label,
    fact: 'noise',
    usual: { min: -20, max: 140, text: 'levels in rooms lie between -20 and 140 dB' },
  };
  if (statement.slots.has('levels')) {
    const levels = readBands(ctx, statement, 'levels', { ...rule, noun: 'a band level', weightings: ['none', 'Z'] });
    return levels && { ...named, kind: 'bands', levels, hours: undefined };
  }
  const reading = numberIn(ctx, statement, 'reading', { ...rule, weightings: ['A', 'C', 'none', 'Z'] });
  const shape = wordIn(statement, 'shape');
  if (!reading?.level || !shape) return undefined;
  return {
    ...named,
    kind: 'shaped',
    hours: undefined,
    reading: { ...reading.sourced, value: reading.level },
    shape: keep(ctx, `${label}: like`, 'noise', 'text', {
      value: shape.word,
      origin: { kind: 'given' },
      range: shape.range,
      text: shape.word,
    }),
  };
}

function readAppliances(reader: BlockReader): Appliance[] {
  return factsOf(reader, 'appliance').flatMap((statement) => {
    const named = nameOf(statement);
    const flue = wordIn(statement, 'flue');
    if (!named) return [];
    const value = (flue?.word ?? 'unknown') as 'open-flued' | 'room-sealed' | 'unknown';
    const sourced = keep(reader.ctx, `appliance ${named.name}: flue`, 'appliance', 'text', {
      value,
      origin: { kind: 'given' },
      range: flue?.range ?? headerOf(statement),
      text: value,
    });
    return [{ ...named, ...titleOf(statement), range: wholeOf(statement), flue: sourced, where: undefined }];
  });
}
