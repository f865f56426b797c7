import { ArgumentError } from './argument-error.js';

/**
 * Rejects a word that is none of those allowed, as a caller without types can pass one.
 * Errors: ArgumentError that names argument, value and the allowed words.
 *
 * @example
 * ```ts
 * import { requireOneOf } from '@boothwright/acoustics/errors';
 *
 * requireOneOf('backing', 'hard', ['rigid', 'open']); // throws ArgumentError: backing is "hard", expected rigid or open
 * ```
 */
export function requireOneOf<Word extends string>(
  argument: string,
  value: unknown,
  allowed: readonly Word[],
): asserts value is Word {
  if (typeof value === 'string' && (allowed as readonly string[]).includes(value)) return;
  const found = typeof value === 'string' ? `"${value}"` : value;
  const words = allowed.length > 1 ? `${allowed.slice(0, -1).join(', ')} or ${allowed.at(-1)}` : allowed.join('');
  throw new ArgumentError(argument, found, words);
}
