import path from 'node:path';
import { assess, type ResultDocument } from '@boothwright/assessment';
import { checkSpec } from '@boothwright/language';
import { partsCsv, renderPartsText } from '@boothwright/presentation';
import { chooseSpec, grave, problemsText, shownProblems } from './check-command.js';
import { type Complaint, complaintText } from './complaint.js';
import { type ExitCode, exitCode } from './exit-code.js';
import { guarded } from './guarded.js';
import { nearbySpecs } from './nearby-specs.js';
import { startProgress } from './progress.js';
import { readText } from './read-text.js';
import { styleOf, type Terminal } from './terminal.js';
import { toJson } from './to-json.js';
import { openWorkspace } from './workspace.js';

export type PartsFormat = 'text' | 'csv' | 'json';

export interface PartsCommandOptions {
  readonly format: PartsFormat;
  readonly variant?: string | undefined;
}

/** `parts`: cut list, layouts, what to buy and what to seal of one specification to standard output. */
export function partsCommand(spec: string, options: PartsCommandOptions, terminal: Terminal): ExitCode {
  return guarded(spec, terminal, () => listParts(spec, options, terminal));
}

function listParts(spec: string, options: PartsCommandOptions, terminal: Terminal): ExitCode {
  const errorStyle = styleOf(terminal.stderr, terminal.env);
  const complain = (complaint: Complaint): ExitCode => {
    terminal.stderr.write(complaintText(complaint, errorStyle));
    return exitCode.misuse;
  };
  const read = readText(path.resolve(terminal.cwd, spec), spec);
  if (read.kind === 'complaint') return complain(nearbySpecs(read, spec, terminal.cwd));
  const workspace = openWorkspace(spec, read.text, terminal.cwd);
  const endProgress = startProgress(`Working out ${spec} …`, terminal.stderr);
  try {
    const checked = checkSpec(workspace.entry, workspace.host);
    const problems = shownProblems(checked, workspace);
    const texts = new Map(checked.files.map(({ file, text }) => [workspace.shownAs(file), text]));
    terminal.stderr.write(problemsText(problems, texts, errorStyle));
    const chosen = chooseSpec(checked.spec, options.variant, spec);
    if ('complaint' in chosen) return complain(chosen.complaint);
    // Other variants bring nothing to this list.
    const result = assess({ ...chosen.spec, variants: [] });
    endProgress();
    terminal.stdout.write(printed(result, options.format, terminal));
    const nothing = Object.keys(result.booths).length === 0;
    return nothing || problems.some(grave) ? exitCode.missed : exitCode.met;
  } finally {
    endProgress();
  }
}

function printed(result: ResultDocument, format: PartsFormat, terminal: Terminal): string {
  if (format === 'csv') return partsCsv(result);
  if (format === 'text') return renderPartsText(result, styleOf(terminal.stdout, terminal.env));
  const booths = Object.entries(result.booths).map(([name, { build }]) => [name, build]);
  return `${toJson({ file: result.file, booths: Object.fromEntries(booths) })}\n`;
}
