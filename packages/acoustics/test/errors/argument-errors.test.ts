import { describe, expect, test } from 'vitest';
import { ArgumentError } from '../../src/index.js';
import { validCalls } from './valid-calls.js';
import { wrongCalls } from './wrong-arguments.js';

describe('a wrong argument', () => {
  test.each(validCalls.map((valid) => [valid.name, valid] as const))('of %s is told as such', (_, valid) => {
    expect(() => valid.run(...(valid.args as never[]))).not.toThrow();
    const calls = wrongCalls(valid);
    expect(calls.length).toBeGreaterThan(0);
    const untold = calls.filter(({ args }) => !toldBy(() => valid.run(...(args as never[]))));
    expect(untold.map(({ what }) => what)).toEqual([]);
  });
});

/** Whether a call throws an ArgumentError that names the argument, holds its value and says what is allowed. */
function toldBy(run: () => unknown): boolean {
  try {
    run();
    return false;
  } catch (error) {
    if (!(error instanceof ArgumentError)) return false;
    return error.argument !== '' && error.allowed !== '' && 'value' in error && error.message.includes('expected');
  }
}
