import fc from 'fast-check';
import * as mathjs from 'mathjs';
import { describe, expect, it } from 'vitest';
import {
  add,
  baseValue,
  dimensionKey,
  divide,
  multiply,
  negate,
  subtract,
  unitFromFactors,
} from '../../src/units/math.js';
import { UNIT_WORDS, unitWord } from '../../src/units/unit-names.js';

// A library of units checks the table: it has its own definition of nearly every unit.
const library = mathjs.create(mathjs.all!);
library.createUnit({ cfm: '1 ft^3/min', rayl: '1 Pa s/m' });
const ownSorts = /^([A-Z]{3}|degreeofarc|partspermillion)$/;
const names = [...new Set(UNIT_WORDS.flatMap((word) => unitWord(word)?.math ?? []))];
const known = names.filter((name) => !ownSorts.test(name));

interface Inside {
  readonly value: number;
  readonly dimensions: readonly number[];
}
const theirs = (text: string) => library.unit(1, text) as unknown as Inside;
const close = (a: number, b: number) => Math.abs(a / b - 1) < 1e-9;

describe('unitFromFactors(factors)', () => {
  it('knows every word of the language', () => {
    expect(names.length).toBeGreaterThan(40);
    for (const name of names) expect(() => unitFromFactors([[name, 1]])).not.toThrow();
    expect(() => unitFromFactors([['furlong', 1]])).toThrow(/furlong/);
  });

  it.each(known)('%s has the size that a library of units gives it', (name) => {
    expect(close(baseValue(unitFromFactors([[name, 1]])), theirs(name).value)).toBe(true);
  });

  const factors = fc.uniqueArray(fc.tuple(fc.constantFrom(...known), fc.constantFrom(-3, -2, -1, 1, 2, 3)), {
    minLength: 1,
    maxLength: 4,
    selector: ([name]) => name,
  });

  it('products have the size, and two are of one sort, exactly where the library says so', () => {
    const text = (list: readonly (readonly [string, number])[]) => list.map(([n, p]) => `${n}^${p}`).join(' ');
    fc.assert(
      fc.property(factors, factors, (one, two) => {
        const [a, b] = [unitFromFactors(one), unitFromFactors(two)];
        const [their, other] = [theirs(text(one)), theirs(text(two))];
        expect(Math.abs(baseValue(a) / their.value - 1)).toBeLessThan(1e-7);
        const same = their.dimensions.every((power, index) => power === other.dimensions[index]);
        expect(dimensionKey(a) === dimensionKey(b)).toBe(same);
      }),
    );
  });

  it('money, angle and parts are each a sort of their own', () => {
    const keys = ['EUR', 'USD', 'GBP', 'degreeofarc', 'partspermillion'].map((name) =>
      dimensionKey(unitFromFactors([[name, 1]])),
    );
    expect(new Set([...keys, '']).size).toBe(6);
  });
});

describe('arithmetic', () => {
  const metre = unitFromFactors([['m', 1]]);
  const foot = unitFromFactors([['ft', 1]]);

  it('adds, subtracts and negates in base units', () => {
    expect(baseValue(add(metre, foot))).toBe(1.3048);
    expect(baseValue(subtract(metre, foot))).toBeCloseTo(0.6952, 12);
    expect(baseValue(negate(foot))).toBe(-0.3048);
    expect(dimensionKey(add(metre, foot))).toBe(dimensionKey(metre));
    expect(add(2, 3)).toBe(5);
  });

  it('refuses sums of different sorts', () => {
    expect(() => add(metre, unitFromFactors([['s', 1]]))).toThrow(/different sorts/);
    expect(() => subtract(metre, 1)).toThrow(/different sorts/);
  });

  it('multiplies and divides the sorts too; what is left without one is a bare number', () => {
    expect(dimensionKey(multiply(metre, metre))).toBe(dimensionKey(unitFromFactors([['m', 2]])));
    expect(divide(foot, metre)).toBe(0.3048);
    expect(baseValue(multiply(2, foot))).toBe(0.6096);
    expect(multiply(metre, unitFromFactors([['m', -1]]))).toBe(1);
  });
});
