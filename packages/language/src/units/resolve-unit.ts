import { isCurrency } from './currencies.js';
import type { DimensionName } from './dimension.js';
import { type Amount, baseValue, dimensionKey, multiply, unitFromFactors } from './math.js';
import { LEVEL_UNITS, TEMPERATURE_UNITS, unitWord } from './unit-names.js';

export type ResolvedUnit =
  | { readonly kind: 'factor'; readonly one: Amount; readonly factor: number; readonly dimension: string }
  | { readonly kind: 'share' }
  | { readonly kind: 'level'; readonly weighting: (typeof LEVEL_UNITS)[string] }
  | { readonly kind: 'temperature'; readonly celsius: (value: number) => number };

const cache = new Map<string, ResolvedUnit>();

/** What a unit as typed stands for; undefined when a word of it is no unit. Each spelling is worked out once. */
export function resolveUnit(text: string): ResolvedUnit | undefined {
  const known = cache.get(text);
  if (known) return known;
  const made = make(text);
  // Spellings come from the text of a user: the cache must not grow without bound.
  if (made && cache.size < 500) cache.set(text, made);
  return made;
}

function make(text: string): ResolvedUnit | undefined {
  if (text === '%') return { kind: 'share' };
  if (Object.hasOwn(LEVEL_UNITS, text)) return { kind: 'level', weighting: LEVEL_UNITS[text]! };
  if (Object.hasOwn(TEMPERATURE_UNITS, text)) return { kind: 'temperature', celsius: TEMPERATURE_UNITS[text]! };
  const factors: [string, number][] = [];
  let sign = 1;
  for (const piece of text.split(/([./])/)) {
    if (piece === '.') continue;
    if (piece === '/') {
      sign = -1;
      continue;
    }
    const [word, power] = piece.split('^');
    const found = unitWord(word!);
    if (!found || (power !== undefined && !/^[1-4]$/.test(power))) return undefined;
    factors.push([found.math, sign * found.power * Number(power ?? 1)]);
  }
  const one = unitFromFactors(factors);
  if (isCurrency(text)) currencies.set(dimensionKey(one), text);
  return { kind: 'factor', one, factor: baseValue(one), dimension: dimensionKey(one) };
}

/** Key of the dimension of a unit, to hold others against. */
export function resolvedDimension(text: string): string {
  return keyOf(text);
}

function keyOf(text: string): string {
  const unit = resolveUnit(text);
  return unit?.kind === 'factor' ? unit.dimension : '';
}

/** One unit per dimension that has base units behind it. */
const SAMPLES: Readonly<Partial<Record<DimensionName, string>>> = {
  length: 'm',
  area: 'm2',
  volume: 'm3',
  mass: 'kg',
  'mass-per-area': 'kg/m2',
  density: 'kg/m3',
  pressure: 'Pa',
  resistivity: 'Pa.s/m2',
  'flow-resistance': 'Pa.s/m',
  time: 's',
  frequency: 'Hz',
  flow: 'm3/s',
  speed: 'm/s',
  power: 'W',
  concentration: 'ppm',
  'temperature-difference': 'K',
  stiffness: 'N/m',
  angle: 'deg',
};

const names = new Map<string, DimensionName>([
  ['', 'count'],
  ...Object.entries(SAMPLES).map(([name, unit]): [string, DimensionName] => [keyOf(unit), name as DimensionName]),
]);

/** Currencies that a text has named so far, by their key. */
const currencies = new Map<string, string>();

/** Undefined for a product that has no name in the trade. */
export function dimensionName(key: string): DimensionName | undefined {
  return names.get(key) ?? (currencies.has(key) ? 'money' : undefined);
}

export function currencyOf(key: string): string | undefined {
  return currencies.get(key);
}

/** A literal in base units. Dividing by 1000 keeps `12.5 mm` at 0.0125, where multiplying by 0.001 would not. */
export function toBase(value: number, { factor }: Extract<ResolvedUnit, { kind: 'factor' }>): number {
  const divisor = Math.round(1 / factor);
  return factor < 1 && Math.abs(divisor * factor - 1) < 1e-12 ? value / divisor : value * factor;
}

/** The amount of a literal, for arithmetic. */
export function amountOf(value: number, unit: Extract<ResolvedUnit, { kind: 'factor' }>): Amount {
  return multiply(value, unit.one);
}
