import { complaintText } from './complaint.js';
import { type ExitCode, exitCode } from './exit-code.js';
import { styleOf, type Terminal } from './terminal.js';

/**
 * Runs `work`; an exception becomes one sentence instead of a stack trace, and the next file can still be worked on.
 * It can only be a mistake of this program, because nothing in a text is allowed to raise one.
 */
export function guarded<T>(place: string, terminal: Terminal, work: () => T): T | ExitCode {
  try {
    return work();
  } catch (error) {
    const reason = String(error instanceof Error ? error.message : error).split('\n')[0] ?? '';
    terminal.stderr.write(
      complaintText(
        {
          id: 'internal',
          place,
          message: `boothwright itself failed on this file (${reason.slice(0, 200)})`,
          help: 'this is a mistake in boothwright and not in your text: please report it together with the specification',
        },
        styleOf(terminal.stderr, terminal.env),
      ),
    );
    return exitCode.misuse;
  }
}
