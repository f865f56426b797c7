import type { Unit } from 'mathjs';
import * as mathjs from 'mathjs';
import { isCurrency } from './currencies.js';

export type Amount = Unit | number;

/** What is used of the class of units beyond what the library's types tell of it. */
interface UnitClass {
  new (value: number | null, unit: string): Unit;
  createUnit(definitions: Readonly<Record<string, string>>): Unit;
  createUnitSingle(name: string): Unit;
}

/** The library writes a unit's size as a fraction here and there; as a number it is all that is asked of it. */
class Fraction {
  readonly isFraction = true;

  constructor(
    private readonly over: number,
    private readonly under: number,
  ) {}

  valueOf(): number {
    return this.over / this.under;
  }
}

const refuse = (): never => {
  throw new TypeError('units hold numbers only');
};

/**
 * The library's units over plain numbers: without its big, complex and matrix arithmetic, which is four times as large.
 * No text of a user ever reaches it: names come from the table of units, numbers from our own lexer. Units of its own
 * are made here once and never again.
 */
const Units: UnitClass = (mathjs as unknown as { createUnitClass(parts: object): UnitClass }).createUnitClass({
  on: () => undefined,
  config: { number: 'number', predictable: false, relTol: 1e-12, absTol: 1e-15 },
  addScalar: (a: number, b: number) => a + b,
  subtractScalar: (a: number, b: number) => a - b,
  multiplyScalar: (a: number, b: number) => a * b,
  divideScalar: (a: number, b: number) => a / b,
  pow: (a: number, b: number) => a ** b,
  abs: Math.abs,
  fix: Math.trunc,
  round: Math.round,
  equal: (a: number, b: number) => a === b,
  isNumeric: (value: unknown) => typeof value === 'number',
  format: String,
  number: Number,
  // One unit of electricity has a size on the imaginary axis; no text can name it.
  Complex: { I: Number.NaN },
  BigNumber: refuse,
  Fraction,
});
Units.createUnit({ cfm: '1 ft^3/min', rayl: '1 Pa s/m' });
Units.createUnitSingle('partspermillion');
// A sort of its own and not a share of the radian, so that `30 deg` stays 30 to the last digit.
Units.createUnitSingle('degreeofarc');

/** Each currency is a base of its own, made when it is first asked for: a text has one or two of the two hundred there are. */
const currencies = new Set<string>();

function ensureCurrency(name: string): void {
  if (!isCurrency(name) || currencies.has(name)) return;
  currencies.add(name);
  Units.createUnitSingle(name);
}

/** One of a unit given as factors, e.g. `[['kg', 1], ['m', -2]]`. */
export function unitFromFactors(factors: readonly (readonly [string, number])[]): Unit {
  for (const [name] of factors) ensureCurrency(name);
  return new Units(1, factors.map(([name, power]) => `${name}^${power}`).join(' '));
}

export const add = (a: Amount, b: Amount): Amount => sum(a, b, 1);
export const subtract = (a: Amount, b: Amount): Amount => sum(a, b, -1);

export function multiply(a: Amount, b: Amount): Amount {
  if (typeof a !== 'number') return inside(a).multiply(b);
  return typeof b === 'number' ? a * b : inside(b).multiply(a);
}

export function divide(a: Amount, b: Amount): Amount {
  if (typeof a !== 'number') return inside(a).divide(b);
  return typeof b === 'number' ? a / b : inside(b).divideInto(a);
}

export const negate = (a: Amount): Amount => (typeof a === 'number' ? -a : withValue(a, -baseValue(a)));

function sum(a: Amount, b: Amount, sign: 1 | -1): Amount {
  if (typeof a === 'number' && typeof b === 'number') return a + sign * b;
  if (typeof a === 'number' || typeof b === 'number' || !a.equalBase(b)) throw new TypeError('Units do not match');
  return withValue(a, baseValue(a) + sign * baseValue(b));
}

function withValue(unit: Unit, value: number): Amount {
  const result = inside(unit).clone();
  result.value = value;
  result.fixPrefix = false;
  return result as unknown as Unit;
}

/** What every unit of mathjs has beyond its types: the value in base units, the powers of the bases, and arithmetic. */
interface Inside {
  value: number;
  fixPrefix: boolean;
  readonly dimensions: readonly number[];
  clone(): Inside;
  multiply(other: Amount): Amount;
  divide(other: Amount): Amount;
  divideInto(other: number): Amount;
}

const inside = (unit: Unit): Inside => unit as unknown as Inside;

export function baseValue(amount: Amount): number {
  return typeof amount === 'number' ? amount : inside(amount).value;
}

/**
 * Powers of the base units as a key; empty for a bare number. Trailing zeros are left out, so that a base that is made
 * later changes no key.
 */
export function dimensionKey(amount: Amount): string {
  if (typeof amount === 'number') return '';
  const powers = inside(amount).dimensions;
  const last = powers.findLastIndex((power) => power !== 0);
  return powers
    .slice(0, last + 1)
    .map((power) => Math.round(power * 1000) / 1000)
    .join(',');
}
