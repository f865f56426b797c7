import type { DefaultName } from '../defaults.js';
import { limits } from '../limits.js';
import type { BandTable, Level, Price } from '../model/booth-spec.js';
import type { Evidence, Origin, Sourced, SourceRange } from '../model/sourced.js';
import type { Expression, Slot, Statement } from '../syntax/tree.js';
import { type Advice, didYouMeanAdvice, type Hint, writeAdvice } from '../text/advice.js';
import type { DimensionName } from '../units/dimension.js';
import { DIMENSION_WORDS } from '../units/dimension-words.js';
import { currencyOf, dimensionName, resolvedDimension } from '../units/resolve-unit.js';
import { units } from '../units/units.js';
import { EVIDENCE_WORDS } from '../vocabulary/words.js';
import { nearestBand } from './bands.js';
import { type BlockReader, factOf, slotOf } from './block-reader.js';
import {
  type CheckContext,
  complain,
  fallback,
  headerOf,
  hearing,
  isCatalogue,
  keep,
  meantHint,
  rangeIn,
  refer,
  slotRange,
  textOf,
  warn,
} from './context.js';
import { evaluate } from './evaluate.js';
import { inOtherUnit, type Usual } from './usual.js';
import { inWords, plain, type Value, valueDimension } from './value.js';

/** What an expression comes to where it stands; names are those of `let`. */
export function evaluateHere(ctx: CheckContext, expression: Expression, file: string): Value | undefined {
  return evaluate(expression, {
    text: (span) => textOf(ctx, rangeIn(file, span)),
    lookup: (name, span) => lookup(ctx, name, rangeIn(file, span)),
    report: (id, span, message, hint) => complain(ctx, id, rangeIn(file, span), message, { hint }),
  });
}

function lookup(ctx: CheckContext, name: string, range: SourceRange): Value | undefined {
  const declaration = ctx.program.lets.get(name);
  if (!declaration) {
    if (ctx.broken.has(name)) return undefined;
    const other = ctx.program.materials.has(name)
      ? 'a material'
      : ctx.program.assemblies.has(name)
        ? 'an assembly'
        : undefined;
    if (other) complain(ctx, 'not-a-value', range, `\`${name}\` is ${other}, not a value`);
    else
      complain(ctx, 'unknown-name', range, `no value is called \`${name}\``, {
        hint: meantHint(ctx, name, ctx.program.lets.keys()) ?? `add \`let ${name} = …\``,
      });
    return undefined;
  }
  refer(ctx, 'let', name, range);
  return letValue(ctx, name);
}

/** Value of a `let`, worked out when it is first asked for, so that the order of lines does not matter. */
export function letValue(ctx: CheckContext, name: string): Value | undefined {
  const known = ctx.letValues.get(name);
  if (known === 'busy') {
    reportCycle(ctx, name);
    return undefined;
  }
  if (known !== undefined || ctx.letValues.has(name)) return known;
  const { statement } = ctx.program.lets.get(name)!;
  const slot = slotOf(statement, 'value', 'expression');
  if (ctx.purse.lets === 0) {
    complain(
      ctx,
      'let-too-deep',
      headerOf(statement),
      `\`${name}\` stands at the end of more than ${limits.letDepth} values that lead to each other`,
      {
        hint: 'give one of them a value of its own',
      },
    );
    ctx.letValues.set(name, undefined);
    return undefined;
  }
  ctx.purse.lets--;
  ctx.letValues.set(name, 'busy');
  const value = slot ? evaluateHere(ctx, slot.expression, slot.file ?? statement.file) : undefined;
  ctx.purse.lets++;
  ctx.letValues.set(name, value);
  return value;
}

function reportCycle(ctx: CheckContext, name: string): void {
  const busy = [...ctx.letValues].filter(([, value]) => value === 'busy').map(([key]) => key);
  const cycle = [...busy.slice(busy.indexOf(name)), name];
  const { statement, nameSpan } = ctx.program.lets.get(name)!;
  complain(
    ctx,
    'let-cycle',
    rangeIn(statement.file, nameSpan),
    `\`${name}\` is defined by itself: ${cycle.join(' -> ')}`,
    { hint: 'give one of them a value of its own' },
  );
}

export interface NumberRule {
  readonly dimension: DimensionName | 'amount';
  /** How the fact is called in messages: `a thickness`. */
  readonly noun: string;
  readonly label: string;
  readonly fact: string;
  /** Error when the value lies outside; ends included unless `aboveZero`. */
  readonly min?: number;
  readonly max?: number;
  readonly aboveZero?: boolean;
  readonly whole?: boolean;
  /** Warning when the value lies outside, with what is usual in words. */
  readonly usual?: Usual;
  /** The same for an amount that is a mass per area. */
  readonly usualMass?: Usual;
  readonly weightings?: readonly Level['weighting'][];
  /** A pressure that is a load on a floor. */
  readonly isLoad?: true;
  /** What `max` comes from, in words. */
  readonly maxText?: string;
}

export interface MeasuredNumber {
  readonly sourced: Sourced<number>;
  readonly dimension: DimensionName;
  readonly currency: string | undefined;
  readonly level: Level | undefined;
}

/** A number in the unit of the checked spec, or undefined when it is wrong and has been reported. */
export function readNumber(
  ctx: CheckContext,
  expression: Expression,
  file: string,
  origin: Origin,
  rule: NumberRule,
  example?: string,
): MeasuredNumber | undefined {
  const value = evaluateHere(ctx, expression, file);
  if (!value) return undefined;
  const range = rangeIn(file, expression);
  const text = textOf(ctx, range);
  if (!fits(value, rule)) {
    reportDimension(ctx, range, text, value, rule, example);
    return undefined;
  }
  // A share of the air in percent is as clear as one in parts per million.
  const scale = rule.dimension === 'concentration' && value.kind === 'quantity' && value.share ? 1e6 : 1;
  const number = plain(value) * scale;
  if (!Number.isFinite(number)) {
    complain(ctx, 'number-too-large', range, `\`${text}\` is no number that can be worked with`);
    return undefined;
  }
  const dimension = rule.dimension === 'amount' ? valueDimension(value)! : rule.dimension;
  const isMass = rule.dimension === 'amount' && dimension === 'mass-per-area';
  if (!withinRule(ctx, range, text, number, rule, isMass)) return undefined;
  const sourced = keep(ctx, rule.label, rule.fact, dimension, {
    value: number,
    origin,
    range,
    text,
    ...(value.tolerance === undefined ? {} : { tolerance: value.tolerance * scale }),
  });
  const currency = value.kind === 'quantity' ? currencyOf(value.dimension) : undefined;
  return { sourced, dimension, currency, level: value.kind === 'level' ? value.level : undefined };
}

function fits(value: Value, rule: NumberRule): boolean {
  if (rule.dimension === 'level')
    return value.kind === 'level' && (rule.weightings?.includes(value.level.weighting) ?? true);
  if (rule.dimension === 'temperature') return value.kind === 'temperature';
  if (value.kind !== 'quantity') return false;
  if (rule.dimension === 'share') return value.share;
  if (value.share) return rule.dimension === 'concentration';
  const found = dimensionName(value.dimension);
  return rule.dimension === 'amount' ? found === 'length' || found === 'mass-per-area' : found === rule.dimension;
}

function reportDimension(
  ctx: CheckContext,
  range: SourceRange,
  text: string,
  value: Value,
  rule: NumberRule,
  line: string | undefined,
): void {
  const wanted = rule.dimension === 'amount' ? 'length' : rule.dimension;
  const { noun, example } = DIMENSION_WORDS[wanted];
  const like = `write it like \`${line ?? example}\``;
  const hint = loadHint(text, value, rule) ??
    forceHint(text, value, rule) ?? { hint: like, instead: withUnits(text, value, rule) };
  const bare = value.kind === 'quantity' && !value.share && value.dimension === '';
  if (rule.dimension === 'level' && value.kind === 'level') {
    const list = rule.weightings!.map((weighting) => `\`${weightingUnit(weighting)}\``).join(' or ');
    const message = `${rule.noun} is a level in ${list}; \`${text}\` is in \`${weightingUnit(value.level.weighting)}\``;
    complain(ctx, 'unit-of-wrong-dimension', range, message, { hint });
  } else if (bare && wanted !== 'count') {
    complain(ctx, 'unit-missing', range, `\`${text}\` has no unit: ${rule.noun} is ${noun}`, {
      hint:
        wanted === 'money'
          ? { hint: `write \`${text} EUR\`, or the letters of another currency`, instead: withUnits(text, value, rule) }
          : hint,
    });
  } else {
    const sort = rule.dimension === 'amount' ? `${noun} or a mass per area` : noun;
    complain(ctx, 'unit-of-wrong-dimension', range, `${rule.noun} is ${sort}; \`${text}\` is ${inWords(value)}`, {
      hint,
    });
  }
}

/** A number without its unit, or a level with that of another weighting, in each unit in which it is often meant. */
function withUnits(text: string, value: Value, rule: NumberRule): readonly string[] {
  const number = /^-?[\d.]+(?:-\d+\/\d+|\/\d+)?(?= ?(?:dB\w*|NC)?$)/.exec(text)?.[0];
  if (number === undefined) return [];
  if (rule.dimension === 'level')
    return (rule.weightings ?? ['A', 'none']).map((weighting) => `${number} ${weightingUnit(weighting)}`);
  if (value.kind === 'level') return [];
  // A share of less than one is one of the whole: 0.8 means 80 %.
  if (rule.dimension === 'share' && Number(number) > 0 && Number(number) < 1)
    return [`${Number((100 * Number(number)).toPrecision(12))} %`];
  const wanted = rule.dimension === 'amount' ? ['length', 'mass-per-area'] : [rule.dimension];
  return units
    .filter(({ dimension, common }) => common && wanted.includes(dimension))
    .map(({ unit }) => `${number} ${unit}`);
}

/** Standard gravity as building practice rounds it, m/s2. */
const GRAVITY = 9.81;

/** A load on a floor is a pressure; whoever knows it as a mass per area is told what that weighs. */
function loadHint(text: string, value: Value, rule: NumberRule): Hint | undefined {
  if (!rule.isLoad || value.kind !== 'quantity' || valueDimension(value) !== 'mass-per-area') return undefined;
  const load = Number(((value.si * GRAVITY) / 1000).toPrecision(3));
  return writeAdvice(`${load} kPa`, `: that is what ${text} weigh, at g = ${GRAVITY} m/s2`);
}

/** N per kg over m to `N/mm`: whoever states a stiffness by a mass means its weight. */
function forceHint(text: string, value: Value, rule: NumberRule): Hint | undefined {
  if (rule.dimension !== 'stiffness' || value.kind !== 'quantity') return undefined;
  if (valueDimension(value) === 'mass')
    return 'write the load over how far it gives, like `200 N/mm`: 10 kg that sink by 1 mm are 98 N/mm';
  if (value.dimension !== resolvedDimension('kg/m')) return undefined;
  return writeAdvice(
    `${Number(((value.si * GRAVITY) / 1000).toPrecision(3))} N/mm`,
    `: a load of ${text.replace('/', ' per ')} in newtons, at g = ${GRAVITY} m/s2`,
  );
}

export function weightingUnit(weighting: Level['weighting']): string {
  return { A: 'dBA', C: 'dBC', Z: 'dBZ', FS: 'dBFS', NC: 'NC', none: 'dB' }[weighting];
}

function withinRule(
  ctx: CheckContext,
  range: SourceRange,
  text: string,
  number: number,
  rule: NumberRule,
  isMass: boolean,
): boolean {
  const wrong = (expected: string): false => {
    const hint = otherUnitHint(text, number, rule) ?? 'check the number, its sign and its unit';
    complain(ctx, 'value-implausible', range, `\`${text}\` cannot be ${rule.noun}: ${expected}`, { hint });
    return false;
  };
  if (rule.aboveZero && number <= 0) return wrong('it must be more than zero');
  if (rule.min !== undefined && number < rule.min)
    return wrong(rule.min === 0 ? 'it cannot be negative' : `it must be at least ${limitText(rule.min, rule)}`);
  if (rule.max !== undefined && number > rule.max)
    return wrong(rule.maxText ?? `it can be at most ${limitText(rule.max, rule)}`);
  if (rule.whole && !Number.isInteger(number)) return wrong('it must be a whole number');
  const usual = isMass ? rule.usualMass : rule.usual;
  if (usual && (number < usual.min || number > usual.max))
    warn(
      ctx,
      'value-unusual',
      range,
      `\`${text}\` is unusual for ${isMass ? 'a mass per area' : rule.noun}: ${usual.text}`,
      {
        hint: otherUnitHint(text, number, rule) ?? 'check the number and its unit',
      },
    );
  return true;
}

/** Metres written for millimetres, or seconds for minutes, are the commonest slips. */
function otherUnitHint(text: string, number: number, rule: NumberRule): Advice | undefined {
  const least = rule.usual?.min ?? rule.min ?? 0;
  const most = rule.usual?.max ?? rule.max;
  if (most === undefined || (number >= least && number <= most)) return undefined;
  const meant = inOtherUnit(text, { min: least, max: most });
  return meant === undefined ? undefined : didYouMeanAdvice(meant);
}

const LIMIT_UNITS: Readonly<Partial<Record<NumberRule['dimension'], string>>> = {
  density: 'kg/m3',
  temperature: 'degC',
  level: 'dB',
};

/** A bound of a rule as a user would write it. */
function limitText(limit: number, rule: NumberRule): string {
  if (rule.dimension === 'share') return `${limit * 100} %`;
  const unit = LIMIT_UNITS[rule.dimension];
  return unit ? `${limit} ${unit}` : `${limit}`;
}

/** Origin of a fact: the catalogue, or the user with what they say about it. */
export function originOf(
  statement: Statement,
  shared?: { readonly evidence: Evidence; readonly source: string },
): Origin {
  const clause = statement.clause && { evidence: evidenceOf(statement.clause.evidence), source: statement.clause.text };
  const backing = clause ?? shared;
  if (isCatalogue(statement.file))
    return { kind: 'catalogue', evidence: backing?.evidence ?? 'stated', source: backing?.source ?? '' };
  return { kind: 'given', ...(backing ?? {}) };
}

export function evidenceOf(word: string | undefined): Evidence {
  return word !== undefined && Object.hasOwn(EVIDENCE_WORDS, word)
    ? EVIDENCE_WORDS[word as keyof typeof EVIDENCE_WORDS]
    : 'stated';
}

const GIVEN: Origin = { kind: 'given' };

/**
 * Number in a slot of a statement; undefined when the slot is not there or wrong. On a line that could not be read to
 * its end nothing more is complained about, but what was understood is used.
 */
export function numberIn(
  ctx: CheckContext,
  statement: Statement,
  slot: string,
  rule: NumberRule,
  origin: Origin = GIVEN,
): MeasuredNumber | undefined {
  const found = slotOf(statement, slot, 'expression');
  if (!found) return undefined;
  const file = found.file ?? statement.file;
  return readNumber(hearing(ctx, statement), found.expression, file, origin, rule, statement.fact?.example);
}

type FactRule = Omit<NumberRule, 'label' | 'fact'>;

/** The single number of a fact in a block; undefined when the fact is absent or wrong. */
export function factNumber(
  reader: BlockReader,
  keyword: string,
  rule: FactRule,
  slot = 'value',
): MeasuredNumber | undefined {
  const statement = factOf(reader, keyword);
  return (
    statement && numberIn(reader.ctx, statement, slot, { ...rule, label: `${reader.label}: ${keyword}`, fact: keyword })
  );
}

/** Like `factNumber`, with the named default when the fact is absent or wrong. */
export function factNumberOr(reader: BlockReader, keyword: string, name: DefaultName, rule: FactRule): Sourced<number> {
  return (
    factNumber(reader, keyword, rule)?.sourced ??
    fallback(reader.ctx, name, `${reader.label}: ${keyword}`, rule.dimension === 'amount' ? 'length' : rule.dimension, {
      file: reader.header.file,
      from: reader.header.from,
      to: reader.header.headerTo,
    })
  );
}

/** A word out of a list, such as `swing outward`. */
export function factChoice<T extends string>(reader: BlockReader, keyword: string): Sourced<T> | undefined {
  const statement = factOf(reader, keyword);
  return statement && wordOf<T>(reader.ctx, statement, 'value', `${reader.label}: ${keyword}`);
}

/** A word out of a list in a slot of a line. */
export function wordOf<T extends string>(
  ctx: CheckContext,
  statement: Statement,
  slotName: string,
  label: string,
): Sourced<T> | undefined {
  const slot = slotOf(statement, slotName, 'word');
  if (!slot) return undefined;
  return keep(ctx, label, statement.fact!.keyword, 'text', {
    value: slot.word as T,
    origin: GIVEN,
    range: slotRange(statement, slot),
    text: slot.word,
  });
}

/** A band table, its bands in rising order. Wrong bands are reported and left out. */
export function readBands(
  ctx: CheckContext,
  statement: Statement,
  slotName: string,
  rule: NumberRule,
  origin: Origin = GIVEN,
): Sourced<BandTable> | undefined {
  const slot = slotOf(statement, slotName, 'bands');
  if (!slot) return undefined;
  const file = slot.file ?? statement.file;
  const values: BandTable['values'][number][] = [];
  const bandRule: NumberRule = {
    dimension: 'frequency',
    noun: 'a band',
    label: `${rule.label}, band`,
    fact: rule.fact,
    aboveZero: true,
  };
  for (const band of slot.bands) {
    const frequency = readNumber(ctx, band.frequency, file, origin, bandRule, statement.fact?.example);
    const level = readNumber(ctx, band.value, file, origin, rule, statement.fact?.example);
    if (!frequency || !level) continue;
    const range = rangeIn(file, band);
    const near = nearestBand(slot.grid, frequency.sourced.value);
    if (near.exact === undefined) {
      complain(
        ctx,
        'no-such-band',
        rangeIn(file, band.frequency),
        `\`${frequency.sourced.text}\` is no ${slot.grid === 'octave' ? 'octave' : 'third-octave'} band`,
        { hint: { hint: `the nearest is ${near.nearest} Hz`, instead: [`${near.nearest} Hz`] } },
      );
      continue;
    }
    const earlier = values.find((other) => other.hz === near.exact);
    if (earlier)
      complain(ctx, 'band-twice', range, `the band ${near.exact} Hz stands twice`, {
        related: [{ range: earlier.range, message: 'the first stands here' }],
      });
    else {
      const { value, tolerance } = level.sourced;
      values.push({ hz: near.exact, value, range, ...(tolerance === undefined ? {} : { tolerance }) });
    }
  }
  if (values.length === 0) return undefined;
  values.sort((a, b) => a.hz - b.hz);
  return keep(ctx, rule.label, rule.fact, rule.dimension === 'amount' ? 'length' : rule.dimension, {
    value: { grid: slot.grid, values },
    origin,
    range: slotRange(statement, slot),
    text: textOf(ctx, slotRange(statement, slot)),
  });
}

export function readPrice(
  ctx: CheckContext,
  statement: Statement,
  slotName: string,
  label: string,
  origin: Origin = GIVEN,
): Sourced<Price> | undefined {
  const slot = slotOf(statement, slotName, 'price') as Extract<Slot, { kind: 'price' }> | undefined;
  if (!slot) return undefined;
  const rule: NumberRule = { dimension: 'money', noun: 'a price', label, fact: 'price', min: 0 };
  const amount = readNumber(ctx, slot.amount, slot.file ?? statement.file, origin, rule, statement.fact?.example);
  if (!amount?.currency) return undefined;
  const range = slotRange(statement, slot);
  return {
    value: { amount: amount.sourced.value, currency: amount.currency, per: slot.per?.word as Price['per'] },
    origin,
    range,
    text: textOf(ctx, range),
  };
}
