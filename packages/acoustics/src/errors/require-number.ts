import { ArgumentError } from './argument-error.js';

/** Limits of a number; an absent limit is none. */
export type NumberRange = {
  readonly above?: number;
  readonly atLeast?: number;
  readonly below?: number;
  readonly atMost?: number;
  /** Words for the unit, as "metres"; named in the message. */
  readonly unit?: string;
};

/**
 * Rejects a value that is not a finite number inside a range.
 * Errors: ArgumentError that names argument, value and allowed range.
 *
 * @example
 * ```ts
 * import { requireNumber } from '@boothwright/acoustics/errors';
 *
 * requireNumber('thickness', -1, { atLeast: 0, unit: 'metres' }); // throws ArgumentError: thickness is -1, expected a number of metres of 0 or more
 * ```
 */
export function requireNumber(argument: string, value: number, range: NumberRange = {}): void {
  const { above, atLeast, below, atMost } = range;
  const inside =
    Number.isFinite(value) &&
    !(above !== undefined && value <= above) &&
    !(atLeast !== undefined && value < atLeast) &&
    !(below !== undefined && value >= below) &&
    !(atMost !== undefined && value > atMost);
  if (!inside) throw new ArgumentError(argument, value, allowedWords(range));
}

function allowedWords({ above, atLeast, below, atMost, unit }: NumberRange): string {
  const what = unit === undefined ? 'a number' : `a number of ${unit}`;
  const limits = [
    above === undefined ? undefined : `above ${above}`,
    atLeast === undefined ? undefined : `of ${atLeast} or more`,
    below === undefined ? undefined : `below ${below}`,
    atMost === undefined ? undefined : `up to ${atMost}`,
  ].filter((words) => words !== undefined);
  return limits.length === 0 ? what : `${what} ${limits.join(' and ')}`;
}
