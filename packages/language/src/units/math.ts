import { CURRENCIES } from './unit-names.js';

/** Something measured: its size in base units and the powers of the bases, in the order of `bases`. */
export interface Measured {
  readonly value: number;
  readonly powers: readonly number[];
}

export type Amount = Measured | number;

/**
 * What every unit is a product of. Angle, parts and each currency are sorts of their own: `30 deg` stays 30 to the last
 * digit, parts per million are no bare number, and no currency becomes another.
 */
const bases = ['kg', 'm', 's', 'K', 'degreeofarc', 'partspermillion', ...CURRENCIES] as const;
const none: readonly number[] = bases.map(() => 0);

type Powers = Readonly<Partial<Record<string, number>>>;

const pressure: Powers = { kg: 1, m: -1, s: -2 };
const force: Powers = { kg: 1, m: 1, s: -2 };
const power: Powers = { kg: 1, m: 2, s: -3 };

// The international yard and pound of 1959 and the standard acceleration of gravity, exact by definition.
const foot = 0.3048;
const inch = 0.0254;
const pound = 0.45359237;
const gravity = 9.80665;

/** Size and bases of every single unit. */
const single: Readonly<Record<string, readonly [size: number, powers: Powers]>> = {
  um: [1e-6, { m: 1 }],
  mm: [1e-3, { m: 1 }],
  cm: [1e-2, { m: 1 }],
  m: [1, { m: 1 }],
  km: [1e3, { m: 1 }],
  in: [inch, { m: 1 }],
  ft: [foot, { m: 1 }],
  yd: [3 * foot, { m: 1 }],
  mil: [inch / 1000, { m: 1 }],
  L: [1e-3, { m: 3 }],
  mL: [1e-6, { m: 3 }],
  g: [1e-3, { kg: 1 }],
  kg: [1, { kg: 1 }],
  tonne: [1e3, { kg: 1 }],
  lbm: [pound, { kg: 1 }],
  oz: [pound / 16, { kg: 1 }],
  ms: [1e-3, { s: 1 }],
  s: [1, { s: 1 }],
  min: [60, { s: 1 }],
  h: [3600, { s: 1 }],
  Hz: [1, { s: -1 }],
  kHz: [1e3, { s: -1 }],
  N: [1, force],
  kN: [1e3, force],
  Pa: [1, pressure],
  kPa: [1e3, pressure],
  MPa: [1e6, pressure],
  GPa: [1e9, pressure],
  psi: [(pound * gravity) / inch ** 2, pressure],
  rayl: [1, { kg: 1, m: -2, s: -1 }],
  cfm: [foot ** 3 / 60, { m: 3, s: -1 }],
  W: [1, power],
  kW: [1e3, power],
  mW: [1e-3, power],
  K: [1, { K: 1 }],
  degreeofarc: [1, { degreeofarc: 1 }],
  partspermillion: [1, { partspermillion: 1 }],
  ...Object.fromEntries(CURRENCIES.map((currency) => [currency, [1, { [currency]: 1 }] as const])),
};

/** One of a unit given as factors, e.g. `[['kg', 1], ['m', -2]]`. */
export function unitFromFactors(factors: readonly (readonly [string, number])[]): Amount {
  let value = 1;
  const powers = [...none];
  for (const [name, exponent] of factors) {
    const unit = Object.hasOwn(single, name) ? single[name] : undefined;
    if (unit === undefined) throw new Error(`The table of units lacks ${name}`);
    value *= unit[0] ** exponent;
    for (const [index, base] of bases.entries()) powers[index]! += exponent * (unit[1][base] ?? 0);
  }
  return measured(value, powers);
}

/** An amount without any base left is a bare number. */
function measured(value: number, powers: readonly number[]): Amount {
  return powers.every((each) => each === 0) ? value : { value, powers };
}

const powersOf = (amount: Amount): readonly number[] => (typeof amount === 'number' ? none : amount.powers);

function sameSort(a: Amount, b: Amount): readonly number[] {
  if (dimensionKey(a) !== dimensionKey(b)) throw new Error('Amounts of different sorts cannot be added');
  return powersOf(a);
}

export const add = (a: Amount, b: Amount): Amount => measured(baseValue(a) + baseValue(b), sameSort(a, b));
export const subtract = (a: Amount, b: Amount): Amount => measured(baseValue(a) - baseValue(b), sameSort(a, b));
export const negate = (a: Amount): Amount => measured(-baseValue(a), powersOf(a));

export function multiply(a: Amount, b: Amount): Amount {
  const other = powersOf(b);
  return measured(
    baseValue(a) * baseValue(b),
    powersOf(a).map((each, index) => each + (other[index] ?? 0)),
  );
}

export function divide(a: Amount, b: Amount): Amount {
  const other = powersOf(b);
  return measured(
    baseValue(a) / baseValue(b),
    powersOf(a).map((each, index) => each - (other[index] ?? 0)),
  );
}

export function baseValue(amount: Amount): number {
  return typeof amount === 'number' ? amount : amount.value;
}

/** Powers of the base units as a key; empty for a bare number. */
export function dimensionKey(amount: Amount): string {
  return typeof amount === 'number' ? '' : amount.powers.join(',');
}
