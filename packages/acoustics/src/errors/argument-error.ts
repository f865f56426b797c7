/**
 * An argument that no formula can use.
 *
 * The message says what was found and what was expected; the three fields say the same to a program.
 */
export class ArgumentError extends RangeError {
  override readonly name = 'ArgumentError';

  constructor(
    /** The argument in the words of the reader: "thickness", "absorption of the floor in band 3 of 21". */
    readonly argument: string,
    readonly value: unknown,
    /** What is allowed: "a number of metres of 0 or more". */
    readonly allowed: string,
  ) {
    super(`${argument} is ${String(value)}, expected ${allowed}`);
  }
}
