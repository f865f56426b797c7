import { createHash } from 'node:crypto';
import fs from 'node:fs';
import path from 'node:path';
import { assess } from '@boothwright/assessment';
import {
  printable,
  type ReportInput,
  type ReportPage,
  renderReportHtml,
  renderReportMarkdown,
  reportOf,
} from '@boothwright/presentation';
import { complaintText } from './complaint.js';
import { type ExitCode, exitCode } from './exit-code.js';
import { guarded } from './guarded.js';
import { grave } from './problems-text.js';
import { styleOf, type Terminal } from './terminal.js';
import { type WorkedOut, withCheckedSpec } from './with-checked-spec.js';
import { writeWholeFile } from './write-whole-file.js';

export interface ReportCommandOptions {
  /** The file to write; its ending says whether as HTML or as Markdown. */
  readonly output: string;
  readonly variant?: string | undefined;
  /** Paper of the HTML; the printer's own without it. */
  readonly page?: ReportPage | undefined;
}

const endings: Readonly<Record<string, 'html' | 'markdown'>> = {
  '.html': 'html',
  '.htm': 'html',
  '.md': 'markdown',
  '.markdown': 'markdown',
};

/** `report`: everything that one specification predicts as one file to hand on. */
export function reportCommand(spec: string, options: ReportCommandOptions, terminal: Terminal): ExitCode {
  return guarded(spec, terminal, () => {
    const { output } = options;
    const refuse = (id: string, message: string, help: string): ExitCode => {
      const complaint = { id, place: output, message, help };
      terminal.stderr.write(complaintText(complaint, styleOf(terminal.stderr, terminal.env)));
      return exitCode.misuse;
    };
    const ending = path.extname(output).toLowerCase();
    const form = endings[ending];
    if (form === undefined)
      return refuse(
        'unknown-report-ending',
        `found ${ending === '' ? 'no ending' : `the ending ${ending}`}, expected .html or .md`,
        'the ending says what the report is written as',
      );
    const file = path.resolve(terminal.cwd, output);
    if (isSame(file, path.resolve(terminal.cwd, spec)))
      return refuse('report-over-spec', 'this is the specification itself', 'name another file for the report');
    return withCheckedSpec(spec, { variant: options.variant }, terminal, assess, (worked) => {
      const text = render(inputOf(worked, options.variant), form, options.page);
      const failure = writeWholeFile(file, text);
      if (failure !== undefined) return refuse('unwritable-file', failure.message, failure.help);
      terminal.stdout.write(`${printable(output)}: written\n`);
      const { booths, assemblies } = worked.result;
      const nothing = Object.keys(booths).length + Object.keys(assemblies).length === 0;
      return nothing || worked.problems.some(grave) ? exitCode.missed : exitCode.met;
    });
  });
}

function inputOf({ result, spec, problems, texts, shownAs }: WorkedOut, variant: string | undefined): ReportInput {
  return { result: { ...result, file: shownAs(result.file) }, spec, problems, texts, variant };
}

function render(input: ReportInput, form: 'html' | 'markdown', page: ReportPage | undefined): string {
  const report = reportOf(input);
  if (form === 'markdown') return renderReportMarkdown(report);
  const sha256 = (style: string) => createHash('sha256').update(style, 'utf8').digest('base64');
  return renderReportHtml(report, { sha256, page });
}

function isSame(file: string, other: string): boolean {
  try {
    return fs.realpathSync(file) === fs.realpathSync(other);
  } catch {
    return false;
  }
}
