import { describe, expect, test } from 'vitest';
import { agrees } from './agrees.js';
import { examplesOf } from './collect-examples.js';
import { instrumentExample } from './instrument-example.js';
import { compareResult } from './run-example.js';

describe('a stated result', () => {
  test('is met to its last digit', () => {
    expect(agrees(0.8049, '0.80')).toBe(true);
    expect(agrees(0.8049, '0.81')).toBe(false);
    expect(agrees(49, '49')).toBe(true);
    expect(agrees(1.21e-5, '1.2e-5')).toBe(true);
    expect(agrees(1.31e-5, '1.2e-5')).toBe(false);
    expect(agrees(Number.POSITIVE_INFINITY, 'Infinity')).toBe(true);
  });

  test('may be a list, an object, a word or nothing', () => {
    expect(agrees([1.04, null], '[1.0, null]')).toBe(true);
    expect(agrees([1.04, 2], '[1.0]')).toBe(false);
    expect(agrees({ rw: 52, rule: 'sum' }, "{ rw: 52, rule: 'sum' }")).toBe(true);
    expect(agrees('sum', "'single-band'")).toBe(false);
    expect(agrees(undefined, 'undefined')).toBe(true);
  });

  test('is found behind its statement, with the line of the source', () => {
    const text = [
      '/**',
      ' * Twice.',
      ' *',
      ' * @example',
      ' * ```ts',
      ' * const a = 2;',
      ' * a * 2; // 4',
      ' * ```',
      ' */',
    ];
    const [example] = examplesOf(text.join('\n'), 'a.ts');
    const { code, results } = instrumentExample(example!);
    expect(results).toEqual([{ line: 7, expression: 'a * 2', stated: '4' }]);
    expect(code).toBe('const a = 2;\ncheck(0, () => (a * 2)); // 4\n');
    expect(compareResult(results[0]!, () => 4)).toBeUndefined();
    expect(compareResult(results[0]!, () => 5)?.found).toBe('5');
  });

  test('may be an error', () => {
    const result = { line: 1, expression: 'f()', stated: 'throws RangeError: volume is -1' };
    const fail = () => {
      throw new RangeError('volume is -1, expected a number above 0');
    };
    expect(compareResult(result, fail)).toBeUndefined();
    expect(compareResult(result, () => 1)?.found).toBe('1');
  });

  test('an example without a block of code is told', () => {
    expect(() => examplesOf('/**\n * @example\n * f();\n */', 'a.ts')).toThrow('a.ts:3');
  });
});
