import type { Level, Site } from '../model/booth-spec.js';
import type { Measured, MeasuredLevels, MeasuredReading, MeasuredRecording } from '../model/measured.js';
import type { Sourced } from '../model/sourced.js';
import type { Statement } from '../syntax/tree.js';
import { type BlockReader, factOf, factsOf, isUnfinished, nameOf, readBlock, slotOf, titleOf } from './block-reader.js';
import { type CheckContext, complain, headerOf, keep, slotRange, warn, wholeOf } from './context.js';
import { readBoothName } from './read-booth-name.js';
import { readNeighbourName, readNoiseName } from './read-site-name.js';
import { factChoice, type NumberRule, numberIn, readBands } from './read-value.js';
import { resolvePath } from './resolve-path.js';

/** A `measured` block; what cannot be read of it is left out and reported. */
export function readMeasured(
  ctx: CheckContext,
  statement: Statement,
  site: Site | undefined,
  booths: readonly string[],
): Measured | undefined {
  const named = nameOf(statement);
  if (!named) return undefined;
  const reader = readBlock(ctx, statement, `measured ${named.name}`);
  const readings = (statement.block?.statements ?? []).flatMap((line) => readReading(reader, line, site) ?? []);
  const recordings = factsOf(reader, 'recording').flatMap((line) => readRecording(reader, line) ?? []);
  const isEmpty = !statement.block?.statements.some(({ fact }) => !fact || !NOTES.has(fact.keyword));
  if (isEmpty && statement.complete && !isUnfinished(reader))
    warn(ctx, 'measured-nothing', headerOf(statement), `${reader.label} holds nothing that was measured`, {
      hint: 'add a line such as `room-tone 22 dBA`',
    });
  return {
    ...named,
    ...titleOf(statement),
    range: wholeOf(statement),
    booth: whichBooth(reader, booths),
    date: readDate(reader),
    instrument: readText(reader, 'instrument'),
    fan: factChoice<'off' | 'low' | 'high'>(reader, 'fan'),
    readings,
    recordings,
  };
}

/** Lines that say how it was measured. */
const NOTES: ReadonlySet<string> = new Set(['booth', 'date', 'instrument', 'fan']);

function whichBooth(reader: BlockReader, booths: readonly string[]): string | undefined {
  const { ctx, header, label } = reader;
  const line = factOf(reader, 'booth');
  if (line) return readBoothName(ctx, line) ?? undefined;
  if (booths.length > 1 && header.complete && !isUnfinished(reader))
    complain(
      ctx,
      'fact-missing',
      headerOf(header),
      `${label} does not say which of ${booths.length} booths it is about`,
      {
        hint: `add \`booth ${booths[0]}\``,
      },
    );
  return booths.length === 1 ? booths[0] : undefined;
}

function readText(reader: BlockReader, keyword: string): Sourced<string> | undefined {
  const statement = factOf(reader, keyword);
  const slot = statement && slotOf(statement, 'value', 'string');
  if (!slot) return undefined;
  const range = slotRange(statement, slot);
  return keep(reader.ctx, `${reader.label}: ${keyword}`, keyword, 'text', {
    value: slot.value,
    origin: { kind: 'given' },
    range,
    text: slot.value,
  });
}

function readDate(reader: BlockReader): Sourced<string> | undefined {
  const date = readText(reader, 'date');
  if (!date) return undefined;
  const day = new Date(`${date.value}T00:00:00Z`);
  const isDay =
    /^\d{4}-\d{2}-\d{2}$/.test(date.value) &&
    !Number.isNaN(day.getTime()) &&
    day.toISOString().slice(0, 10) === date.value;
  if (isDay) return date;
  complain(reader.ctx, 'no-such-date', date.range, `\`${date.value}\` is no day of the calendar`, {
    hint: 'write year, month and day, like `2026-05-14`',
  });
  return undefined;
}

const LEVEL = {
  dimension: 'level',
  usual: { min: -130, max: 140, text: 'levels lie between -130 and 140 dB' },
} as const;
const TIME = {
  dimension: 'time',
  noun: 'a reverberation time',
  aboveZero: true,
  usual: { min: 0.01, max: 10, text: 'rooms have 0.01 to 10 s' },
} as const;
const SINGLE = {
  co2: {
    dimension: 'concentration',
    noun: 'carbon dioxide in the air',
    aboveZero: true,
    usual: { min: 350, max: 20_000, text: 'rooms have 350 to 20 000 ppm' },
  },
  'temperature-rise': {
    dimension: 'temperature-difference',
    noun: 'a rise of temperature',
    usual: { min: -5, max: 30, text: 'booths get up to 30 K warmer' },
  },
  mass: { dimension: 'mass', noun: 'a mass', aboveZero: true },
} as const;

function readReading(reader: BlockReader, line: Statement, site: Site | undefined): MeasuredReading | undefined {
  const keyword = line.fact?.keyword;
  const { ctx, label } = reader;
  // The second of a fact that stands once has been reported.
  if (keyword === undefined || !factsOf(reader, keyword).includes(line)) return undefined;
  const range = wholeOf(line);
  const rule = <R extends object>(more: R): R & { label: string; fact: string } => ({
    ...more,
    label: `${label}: ${keyword}`,
    fact: keyword,
  });
  switch (keyword) {
    case 'room-tone': {
      const levels = readLevels(ctx, line, rule({ ...LEVEL, noun: 'room tone' }), ['A', 'none', 'Z', 'NC', 'FS']);
      return levels && { range, kind: keyword, levels };
    }
    case 'isolation': {
      const against = readNoiseName(ctx, line, site);
      const levels = readLevels(ctx, line, rule({ ...LEVEL, noun: 'isolation' }), ['none', 'A']);
      return against && levels && { range, kind: keyword, against: against.name, levels };
    }
    case 'voice-outside': {
      const where = readNeighbourName(ctx, line, site);
      const level = readLevel(ctx, line, 'reading', rule({ ...LEVEL, noun: 'the voice outside', weightings: ['A'] }));
      return level && where !== null ? { range, kind: keyword, where, level } : undefined;
    }
    case 'reverberation': {
      const bands = line.slots.has('bands') && readBands(ctx, line, 'bands', rule(TIME));
      if (bands) return { range, kind: keyword, times: { form: 'bands', bands } };
      const time = numberIn(ctx, line, 'reading', rule(TIME))?.sourced;
      return time && { range, kind: keyword, times: { form: 'single', time } };
    }
    case 'co2':
    case 'temperature-rise':
    case 'mass': {
      const value = numberIn(ctx, line, 'reading', rule(SINGLE[keyword]))?.sourced;
      return value && { range, kind: keyword, value };
    }
  }
  return undefined;
}

function readLevels(
  ctx: CheckContext,
  line: Statement,
  rule: NumberRule,
  weightings: readonly Level['weighting'][],
): MeasuredLevels | undefined {
  if (line.slots.has('bands')) {
    const bands = readBands(ctx, line, 'bands', { ...rule, weightings: ['none', 'Z'] });
    return bands && { form: 'bands', bands };
  }
  const level = readLevel(ctx, line, 'reading', { ...rule, weightings });
  return level && { form: 'single', level };
}

function readLevel(ctx: CheckContext, line: Statement, slot: string, rule: NumberRule): Sourced<Level> | undefined {
  const found = numberIn(ctx, line, slot, rule);
  return found?.level && { ...found.sourced, value: found.level };
}

function readRecording({ ctx, label }: BlockReader, line: Statement): MeasuredRecording | undefined {
  const slot = slotOf(line, 'path', 'string');
  if (!slot) return undefined;
  const range = slotRange(line, slot);
  const resolved = resolvePath(line.file, slot.value);
  if ('refused' in resolved) {
    complain(ctx, 'path-refused', range, `\`${slot.value}\` cannot be used: ${resolved.refused}`, {
      hint: 'write it like `recording "./first-night.wav"`',
    });
    return undefined;
  }
  if (!/\.wav$/i.test(resolved.path)) {
    complain(ctx, 'recording-kind', range, `\`${slot.value}\` is no \`.wav\` file`, {
      hint: 'save the recording as WAV: other kinds leave out what nobody hears, and a noise floor is just that',
    });
    return undefined;
  }
  const fullScale = readLevel(ctx, line, 'full-scale', {
    ...LEVEL,
    noun: 'what full scale stands for',
    label: `${label}: full scale`,
    fact: 'recording',
    weightings: ['none', 'Z'],
  });
  return { range: wholeOf(line), path: resolved.path, fullScale };
}
