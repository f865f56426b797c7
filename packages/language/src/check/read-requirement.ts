import type { Level, Requirement, Site } from '../model/booth-spec.js';
import type { Sourced } from '../model/sourced.js';
import type { Statement } from '../syntax/tree.js';
import { assemblyNamed } from './assembly-names.js';
import { nearestBand } from './bands.js';
import { wordIn } from './block-reader.js';
import { type CheckContext, complain, headerOf, textOf, warn, wholeOf } from './context.js';
import { readBoothName } from './read-booth-name.js';
import { readNeighbourName, readNoiseName } from './read-site-name.js';
import { type NumberRule, numberIn } from './read-value.js';

/** Undefined when the limit cannot be read; that has been reported. */
export function readRequirement(
  ctx: CheckContext,
  statement: Statement,
  site: Site | undefined,
): Requirement | undefined {
  const keyword = statement.fact!.keyword;
  const what = keyword.slice('require '.length);
  const booth = readBoothName(ctx, statement);
  const base = { range: wholeOf(statement), text: textOf(ctx, headerOf(statement)), ...(booth ? { booth } : {}) };
  const number = (slot: string, rule: Omit<NumberRule, 'label' | 'fact'>): ReturnType<typeof numberIn> =>
    numberIn(ctx, statement, slot, { ...rule, label: keyword, fact: keyword });
  const level = (weightings: readonly Level['weighting'][], noun: string): Sourced<Level> | undefined => {
    const found = number('limit', { dimension: 'level', noun, weightings });
    return found?.level && { ...found.sourced, value: found.level };
  };
  if (!statement.complete) {
    // What was understood is still looked at for names and units, but a half-read requirement is no requirement.
    return undefined;
  }
  // A requirement of a booth that is not there must not turn into one of every booth.
  if (booth === null) return undefined;
  switch (what) {
    case 'room-tone': {
      const limit = level(['A', 'none', 'Z', 'NC', 'FS'], 'room tone');
      if (limit) checkCurve(ctx, limit);
      return limit && { ...base, kind: 'room-tone', limit };
    }
    case 'voice-outside': {
      const limit = level(['A'], 'the voice outside');
      const where = readNeighbourName(ctx, statement, site);
      return limit && where !== null ? { ...base, kind: 'voice-outside', limit, where } : undefined;
    }
    case 'reverberation':
      return readReverberation(ctx, statement, number, base);
    case 'decay-ratio': {
      const limit = number('limit', {
        dimension: 'count',
        noun: 'a ratio of decay times',
        aboveZero: true,
        usual: { min: 0.5, max: 10, text: 'decays differ by 0.5 to 10 times' },
      })?.sourced;
      const atHz = readBand(ctx, number, 'at');
      return limit && atHz && { ...base, kind: 'decay-ratio', limit, atHz };
    }
    case 'isolation': {
      const limit = level(['none', 'A'], 'isolation');
      const against = readNoiseName(ctx, statement, site);
      return limit && against && { ...base, kind: what, limit, against: against.name, againstRange: against.range };
    }
    case 'stc':
    case 'rw': {
      const name = wordIn(statement, 'assembly');
      const assembly = name && assemblyNamed(ctx, name.word, name.range);
      const limit = number('limit', {
        dimension: 'count',
        noun: 'a rating',
        min: 0,
        usual: { min: 5, max: 90, text: 'walls reach 5 to 90' },
      });
      return assembly && limit && { ...base, kind: 'rating', rating: what, assembly, limit: limit.sourced };
    }
    case 'cost': {
      const limit = number('limit', { dimension: 'money', noun: 'a cost', min: 0 });
      return limit?.currency ? { ...base, kind: 'cost', limit: limit.sourced, currency: limit.currency } : undefined;
    }
    default: {
      const rule = LIMITS[what as keyof typeof LIMITS];
      const limit = rule && number('limit', { ...rule, aboveZero: true });
      return limit && { ...base, kind: what as keyof typeof LIMITS, limit: limit.sourced };
    }
  }
}

/** Noise criteria for which there are curves, L. L. Beranek's family of 1957 with its later lowest curve. */
const CURVES = { from: 15, to: 70 };

function checkCurve(ctx: CheckContext, { value, range, text }: Sourced<Level>): void {
  if (value.weighting !== 'NC' || (value.decibels >= CURVES.from && value.decibels <= CURVES.to)) return;
  warn(
    ctx,
    'no-such-curve',
    range,
    `there is no curve for \`${text ?? ''}\`: the curves are published from NC ${CURVES.from} to NC ${CURVES.to}`,
    { hint: value.decibels < CURVES.from ? 'state so low a limit in `dBA`' : 'check the number' },
  );
}

const LIMITS = {
  co2: {
    dimension: 'concentration',
    noun: 'carbon dioxide in the air',
    usual: { min: 500, max: 10_000, text: 'limits lie between 500 and 10000 ppm' },
  },
  'temperature-rise': {
    dimension: 'temperature-difference',
    noun: 'a rise of temperature',
    usual: { min: 0.5, max: 20, text: 'limits lie between 0.5 and 20 K' },
  },
  mass: { dimension: 'mass', noun: 'a mass' },
  'floor-load': {
    dimension: 'pressure',
    noun: 'a floor load',
    usual: { min: 200, max: 50_000, text: 'floors are designed for 0.2 to 50 kPa' },
    isLoad: true,
  },
  'panel-weight': { dimension: 'mass', noun: 'the weight of a panel' },
  height: { dimension: 'length', noun: 'a height' },
} as const satisfies Record<string, Omit<NumberRule, 'label' | 'fact'>>;

type ReadNumber = (slot: string, rule: Omit<NumberRule, 'label' | 'fact'>) => ReturnType<typeof numberIn>;
type Base = Pick<Requirement, 'range' | 'text' | 'booth'>;

function readReverberation(
  ctx: CheckContext,
  statement: Statement,
  number: ReadNumber,
  base: Base,
): Requirement | undefined {
  const time = {
    dimension: 'time',
    noun: 'a reverberation time',
    aboveZero: true,
    usual: { min: 0.01, max: 5, text: 'small rooms have 0.05 to 1 s' },
  } as const;
  const max = number('max', time)?.sourced;
  const min = number('min', time)?.sourced;
  const at = readBand(ctx, number, 'at');
  const from = readBand(ctx, number, 'from') ?? at;
  const to = readBand(ctx, number, 'to') ?? at;
  // A band that cannot be read must not turn into a limit for all bands.
  if ((statement.slots.has('at') || statement.slots.has('from')) && !from) return undefined;
  if (statement.slots.has('to') && !to) return undefined;
  if (!inOrder(ctx, min, max) || !inOrder(ctx, from, to)) return undefined;
  return max && { ...base, kind: 'reverberation', min, max, fromHz: from, toHz: to };
}

/** A third-octave band by its nominal centre. */
function readBand(ctx: CheckContext, number: ReadNumber, slot: string): Sourced<number> | undefined {
  const band = number(slot, { dimension: 'frequency', noun: 'a band', aboveZero: true })?.sourced;
  if (!band) return undefined;
  const near = nearestBand('third', band.value);
  if (near.exact !== undefined) return { ...band, value: near.exact };
  complain(ctx, 'no-such-band', band.range, `\`${band.text ?? ''}\` is no third-octave band`, {
    hint: { hint: `the nearest is ${near.nearest} Hz`, instead: [`${near.nearest} Hz`] },
  });
  return undefined;
}

function inOrder(ctx: CheckContext, low: Sourced<number> | undefined, high: Sourced<number> | undefined): boolean {
  if (!low || !high || low.value <= high.value) return true;
  complain(
    ctx,
    'range-turned-round',
    high.range,
    `this range ends at \`${high.text ?? ''}\`, below its start of \`${low.text ?? ''}\``,
    {
      hint: 'write the smaller one first',
      related: [{ range: low.range, message: 'it starts here' }],
    },
  );
  return false;
}
