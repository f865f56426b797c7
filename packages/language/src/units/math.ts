import {
  addDependencies,
  create,
  createUnitDependencies,
  divideDependencies,
  type FactoryFunctionMap,
  type MathJsInstance,
  multiplyDependencies,
  subtractDependencies,
  type Unit,
  unaryMinusDependencies,
  unitDependencies,
} from 'mathjs';
import { CURRENCIES } from './unit-names.js';

export type Amount = Unit | number;

/**
 * A private instance with only what arithmetic on units needs. No text of a user ever reaches it: names come from the
 * table of units, numbers from our own lexer. Units of its own are made here once and never again.
 */
const math: MathJsInstance = create(
  {
    unitDependencies,
    createUnitDependencies,
    addDependencies,
    subtractDependencies,
    multiplyDependencies,
    divideDependencies,
    unaryMinusDependencies,
  } as FactoryFunctionMap,
  {},
);
math.createUnit({ cfm: '1 ft^3/min', rayl: '1 Pa s/m' });
math.createUnit('partspermillion');
// A sort of its own and not a share of the radian, so that `30 deg` stays 30 to the last digit.
math.createUnit('degreeofarc');
for (const currency of CURRENCIES) math.createUnit(currency);

/** One of a unit given as factors, e.g. `[['kg', 1], ['m', -2]]`. */
export function unitFromFactors(factors: readonly (readonly [string, number])[]): Unit {
  return math.unit(1, factors.map(([name, power]) => `${name}^${power}`).join(' '));
}

export const add = (a: Amount, b: Amount): Amount => math.add(a as Unit, b as Unit) as Amount;
export const subtract = (a: Amount, b: Amount): Amount => math.subtract(a as Unit, b as Unit) as Amount;
export const multiply = (a: Amount, b: Amount): Amount => math.multiply(a as Unit, b as Unit) as unknown as Amount;
export const divide = (a: Amount, b: Amount): Amount => math.divide(a as Unit, b as Unit) as unknown as Amount;
export const negate = (a: Amount): Amount => math.unaryMinus(a as Unit) as unknown as Amount;

/** mathjs keeps these two on every unit: the value in base units and the powers of the bases. */
interface Inside {
  readonly value: number;
  readonly dimensions: readonly number[];
}

export function baseValue(amount: Amount): number {
  return typeof amount === 'number' ? amount : (amount as unknown as Inside).value;
}

/** Powers of the base units as a key; empty for a bare number. */
export function dimensionKey(amount: Amount): string {
  if (typeof amount === 'number') return '';
  const powers = (amount as unknown as Inside).dimensions;
  return powers.every((power) => power === 0) ? '' : powers.map((power) => Math.round(power * 1000) / 1000).join(',');
}
