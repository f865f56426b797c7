import path from 'node:path';
import { format } from '@boothwright/language';
import { complaintText } from './complaint.js';
import { type ExitCode, exitCode, worst } from './exit-code.js';
import { guarded } from './guarded.js';
import { nearbySpecs } from './nearby-specs.js';
import { readText } from './read-text.js';
import { replaceFile } from './replace-file.js';
import { styleOf, type Terminal } from './terminal.js';

export interface FormatCommandOptions {
  /** Change nothing; say which files would change. */
  readonly check: boolean;
  /** Change nothing; print the text in the canonical layout. */
  readonly stdout: boolean;
}

/** `format`: brings specifications into the one canonical layout, in place. */
export function formatCommand(specs: readonly string[], options: FormatCommandOptions, terminal: Terminal): ExitCode {
  return worst(specs.map((spec) => guarded(spec, terminal, () => formatOne(spec, options, terminal))));
}

function formatOne(spec: string, options: FormatCommandOptions, terminal: Terminal): ExitCode {
  const absolute = path.resolve(terminal.cwd, spec);
  const style = styleOf(terminal.stderr, terminal.env);
  const read = readText(absolute, spec);
  if (read.kind === 'complaint') {
    terminal.stderr.write(complaintText(nearbySpecs(read, spec, terminal.cwd), style));
    return exitCode.misuse;
  }
  const formatted = inLineEnds(format(read.text.replace(/\r\n?/g, '\n')), lineEndOf(read.text));
  if (options.stdout) {
    terminal.stdout.write(formatted);
    return exitCode.met;
  }
  if (formatted === read.text) return exitCode.met;
  if (options.check) {
    terminal.stdout.write(`${spec}: is not in the canonical layout; run boothwright format on it\n`);
    return exitCode.missed;
  }
  const failure = replaceFile(absolute, (read.byteOrderMark ? '\ufeff' : '') + formatted);
  if (failure === undefined) {
    terminal.stdout.write(`${spec}: formatted\n`);
    return exitCode.met;
  }
  terminal.stderr.write(
    complaintText(
      {
        id: 'unwritable-file',
        place: spec,
        message: `the file cannot be written (${failure})`,
        help: 'it was left as it is',
      },
      style,
    ),
  );
  return exitCode.misuse;
}

/** The line end that most lines of the text have. */
function lineEndOf(text: string): '\n' | '\r\n' {
  const all = text.match(/\n/g)?.length ?? 0;
  const withReturn = text.match(/\r\n/g)?.length ?? 0;
  return withReturn * 2 > all ? '\r\n' : '\n';
}

function inLineEnds(text: string, lineEnd: '\n' | '\r\n'): string {
  return lineEnd === '\n' ? text : text.replace(/\r?\n/g, '\r\n');
}
