import path from 'node:path';
import { type Assessor, createAssessor, type ResultDocument } from '@boothwright/assessment';
import {
  type BoothSpec,
  type CheckResult,
  checkSpec,
  didYouMean,
  type Problem,
  type SourceRange,
} from '@boothwright/language';
import { renderCheckText, renderProblems, type TextStyle } from '@boothwright/presentation';
import { type Complaint, complaintText } from './complaint.js';
import { type ExitCode, exitCode, worst } from './exit-code.js';
import { guarded } from './guarded.js';
import { nearbySpecs } from './nearby-specs.js';
import { startProgress } from './progress.js';
import { readText } from './read-text.js';
import { styleOf, type Terminal } from './terminal.js';
import { toJson } from './to-json.js';
import { openWorkspace, type Workspace } from './workspace.js';

export interface CheckCommandOptions {
  readonly format: 'text' | 'json';
  readonly variant?: string | undefined;
  /** All that the result rests on, besides the answers. */
  readonly full?: boolean | undefined;
}

interface Checked {
  readonly result: ResultDocument;
  readonly code: ExitCode;
}

/** `check`: the result of every specification to standard output, problems of the texts to standard error. */
export function checkCommand(specs: readonly string[], options: CheckCommandOptions, terminal: Terminal): ExitCode {
  const codes: ExitCode[] = [];
  // One memory for all: specifications that share build-ups work them out once.
  const assessor = createAssessor();
  const documents: ResultDocument[] = [];
  for (const spec of specs) {
    const done = guarded(spec, terminal, () => checkOne(spec, options, terminal, assessor, codes.length > 0));
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
  assessor: Assessor,
  follows: boolean,
): Checked | ExitCode {
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
    const chosen = chooseSpec(checked.spec, options.variant, spec);
    const result = 'complaint' in chosen ? undefined : assessedQuietly(assessor, chosen.spec);
    endProgress();
    terminal.stderr.write(problemsText(problems, texts, errorStyle));
    if ('complaint' in chosen) return complain(chosen.complaint);
    if (!result || 'failure' in result) throw result?.failure;
    if (options.format === 'text') {
      const titled = { ...result.document, file: workspace.shownAs(result.document.file) };
      const text = renderCheckText(
        titled,
        problems,
        styleOf(terminal.stdout, terminal.env, options.full ? 'full' : 'short'),
        options.variant,
      );
      terminal.stdout.write(follows ? `\n${text}` : text);
    }
    return { result: result.document, code: verdictOf(result.document, problems) };
  } finally {
    endProgress();
  }
}

/** Holds an exception back until the problems of the text are printed: they are the likelier reason. */
function assessedQuietly(
  assessor: Assessor,
  spec: BoothSpec,
): { readonly document: ResultDocument } | { readonly failure: unknown } {
  try {
    return { document: assessor.assess(spec) };
  } catch (failure) {
    return { failure };
  }
}

/** Errors and warnings with files named as the user does; hints, such as a default that is used, stand in the report. */
export function shownProblems(checked: CheckResult, { shownAs }: Workspace): readonly Problem[] {
  const shown = (range: SourceRange): SourceRange => ({ ...range, file: shownAs(range.file) });
  return checked.problems
    .filter(({ severity }) => severity !== 'hint')
    .map((problem): Problem => {
      const related = problem.related?.map((entry) => ({ ...entry, range: shown(entry.range) }));
      return { ...problem, range: shown(problem.range), ...(related ? { related } : {}) };
    });
}

/** More are not read; the first of them are the likely cause of the rest. */
const mostProblems = 50;

export function problemsText(
  problems: readonly Problem[],
  texts: ReadonlyMap<string, string>,
  style: TextStyle,
): string {
  if (problems.length === 0) return '';
  const more = problems.length - mostProblems;
  return `${renderProblems(problems.slice(0, mostProblems), texts, style)}${more > 0 ? `\n… and ${more} more\n` : ''}\n`;
}

export function chooseSpec(
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

/** A text that describes nothing was hardly what was meant to be checked. */
export const grave = (problem: Problem) => problem.severity === 'error' || problem.id === 'empty-file';

function verdictOf(result: ResultDocument, problems: readonly Problem[]): ExitCode {
  const failed = result.requirements.some(({ verdict }) => verdict !== 'met');
  return failed || problems.some(grave) ? exitCode.missed : exitCode.met;
}
