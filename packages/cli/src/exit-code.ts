/** What the command answers to the shell. The worst of several specifications counts. */
export const exitCode = {
  /** Every requirement is met and the text has no error. */
  met: 0,
  /** A requirement is missed or not assessed, the text has an error, or a file is not in the canonical layout. */
  missed: 1,
  /** The command was called wrongly or could not read or write a file. */
  misuse: 2,
} as const;

export type ExitCode = (typeof exitCode)[keyof typeof exitCode];

export function worst(codes: readonly ExitCode[]): ExitCode {
  return Math.max(exitCode.met, ...codes) as ExitCode;
}
