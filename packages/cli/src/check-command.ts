import path from 'node:path';
import { assess, type ResultDocument } from '@boothwright/assessment';
import { type BoothSpec, checkSpec, didYouMean, type Problem, type SourceRange } from '@boothwright/language';
import { renderCheckText, renderProblems } from '@boothwright/presentation';
import { type Complaint, complaintText } from './complaint.js';
import { type ExitCode, exitCode, worst } from './exit-code.js';
import { guarded } from './guarded.js';
import { nearbySpecs } from './nearby-specs.js';
import { startProgress } from './progress.js';
import { readText } from './read-text.js';
import { styleOf, type Terminal } from './terminal.js';
import { toJson } from './to-json.js';
import { openWorkspace } from './workspace.js';

export interface CheckCommandOptions {
  readonly format: 'text' | 'json';
  readonly variant?: string | undefined;
}

interface Checked {
  readonly result: ResultDocument;
  readonly code: ExitCode;
}

/** `check`: the result of every specification to standard output, problems of the texts to standard error. */
export function checkCommand(specs: readonly string[], options: CheckCommandOptions, terminal: Terminal): ExitCode {
  const codes: ExitCode[] = [];
  const documents: ResultDocument[] = [];
  for (const spec of specs) {
    const done = guarded(spec, terminal, () => checkOne(spec, options, terminal, codes.length > 0));
    codes.push(typeof done === 'number' ? done : done.code);
    if (typeof done !== 'number') documents.push(done.result);
  }
  if (options.format === 'json') {
    const printed = specs.length > 1 ? documents : documents[0];
    if (printed) terminal.stdout.write(`${toJson(printed)}\n`);
  }
  return worst(codes);
}

function checkOne(
  spec: string,
  options: CheckCommandOptions,
  terminal: Terminal,
  follows: boolean,
): Checked | ExitCode {
  const errorStyle = styleOf(terminal.stderr, terminal.env);
  const complain = (complaint: Complaint): ExitCode => {
    terminal.stderr.write(complaintText(complaint, errorStyle));
    return exitCode.misuse;
  };
  const read = readText(path.resolve(terminal.cwd, spec), spec);
  if (read.kind === 'complaint') return complain(nearbySpecs(read, spec, terminal.cwd));

  const endProgress = startProgress(`Working out ${spec} …`, terminal.stderr);
  try {
    const workspace = openWorkspace(spec, read.text, terminal.cwd);
    const checked = checkSpec(workspace.entry, workspace.host);
    const shown = (range: SourceRange): SourceRange => ({ ...range, file: workspace.shownAs(range.file) });
    const problems = checked.problems
      .filter(({ severity }) => severity !== 'hint')
      .map((problem): Problem => {
        const related = problem.related?.map((entry) => ({ ...entry, range: shown(entry.range) }));
        return { ...problem, range: shown(problem.range), ...(related ? { related } : {}) };
      });
    const chosen = chooseSpec(checked.spec, options.variant, spec);
    if ('complaint' in chosen) return complain(chosen.complaint);
    const result = assess(chosen.spec);
    endProgress();
    const texts = new Map(checked.files.map(({ file, text }) => [workspace.shownAs(file), text]));
    terminal.stderr.write(renderProblems(problems, texts, errorStyle));
    if (options.format === 'text') {
      if (problems.length > 0) terminal.stderr.write('\n');
      const titled = { ...result, file: workspace.shownAs(result.file) };
      const text = renderCheckText(titled, problems, styleOf(terminal.stdout, terminal.env), options.variant);
      terminal.stdout.write(follows ? `\n${text}` : text);
    }
    return { result, code: verdictOf(result, problems) };
  } finally {
    endProgress();
  }
}

function chooseSpec(
  spec: BoothSpec,
  variant: string | undefined,
  place: string,
): { readonly spec: BoothSpec } | { readonly complaint: Complaint } {
  if (variant === undefined) return { spec };
  const found = spec.variants.find(({ name }) => name === variant);
  if (found) return { spec: { ...found.spec, variants: [] } };
  const names = spec.variants.map(({ name }) => name);
  const near = didYouMean(variant, names);
  const help =
    names.length === 0
      ? 'the specification declares no variant; leave --variant out'
      : `${near ? `did you mean ${near}? ` : ''}the specification declares ${names.join(', ')}`;
  return {
    complaint: {
      id: 'unknown-variant',
      place,
      message: `found no variant ${variant}, expected one that is declared`,
      help,
    },
  };
}

function verdictOf(result: ResultDocument, problems: readonly Problem[]): ExitCode {
  const failed = result.requirements.some(({ verdict }) => verdict !== 'met');
  return failed || problems.some(({ severity }) => severity === 'error') ? exitCode.missed : exitCode.met;
}
