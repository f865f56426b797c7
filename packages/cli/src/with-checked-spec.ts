import path from 'node:path';
import type { ResultDocument } from '@boothwright/assessment';
import { type BoothSpec, checkSpec, type Problem, type Severities } from '@boothwright/language';
import { chooseSpec } from './choose-spec.js';
import { complaintText } from './complaint.js';
import { type ExitCode, exitCode } from './exit-code.js';
import { nearbySpecs } from './nearby-specs.js';
import { problemsText, shownProblems } from './problems-text.js';
import { startProgress } from './progress.js';
import { readText } from './read-text.js';
import { styleOf, type Terminal } from './terminal.js';
import { openWorkspace, type Workspace } from './workspace.js';

/** How a specification is to be read and worked out. */
export interface AskedOfSpec {
  readonly variant?: string | undefined;
  readonly severities?: Severities | undefined;
}

/** A specification that was read, checked and worked out. */
export interface WorkedOut {
  readonly result: ResultDocument;
  /** What was worked out: the text as it was checked, with the variant in place of the base. */
  readonly spec: BoothSpec;
  readonly problems: readonly Problem[];
  /** The text of each file that was read, by the name that `shownAs` gives it. */
  readonly texts: ReadonlyMap<string, string>;
  readonly shownAs: Workspace['shownAs'];
}

/**
 * Reads a specification and what it uses, works out the variant that is asked for, tells the problems of the text on standard
 * error and hands the result on. What cannot be read, and a variant that is not there, ends as misuse.
 */
export function withCheckedSpec<T>(
  spec: string,
  { variant, severities }: AskedOfSpec,
  terminal: Terminal,
  assess: (spec: BoothSpec) => ResultDocument,
  then: (worked: WorkedOut) => T,
): T | ExitCode {
  const errorStyle = styleOf(terminal.stderr, terminal.env);
  const complain = (complaint: Parameters<typeof complaintText>[0]): ExitCode => {
    terminal.stderr.write(complaintText(complaint, errorStyle));
    return exitCode.misuse;
  };
  const read = readText(path.resolve(terminal.cwd, spec), spec);
  if (read.kind === 'complaint') return complain(nearbySpecs(read, spec, terminal.cwd));

  const workspace = openWorkspace(spec, read.text, terminal.cwd);
  const endProgress = startProgress(`Working out ${spec} …`, terminal.stderr);
  try {
    const checked = checkSpec(workspace.entry, workspace.host, severities === undefined ? {} : { severities });
    const problems = shownProblems(checked, workspace);
    const texts = new Map(checked.files.map(({ file, text }) => [workspace.shownAs(file), text]));
    const chosen = chooseSpec(checked.spec, variant, spec);
    const assessed = 'complaint' in chosen ? undefined : assessedQuietly(assess, chosen.spec);
    endProgress();
    terminal.stderr.write(problemsText(problems, texts, errorStyle));
    if ('complaint' in chosen) return complain(chosen.complaint);
    if (!assessed || 'failure' in assessed) throw assessed?.failure;
    return then({ result: assessed.document, spec: chosen.spec, problems, texts, shownAs: workspace.shownAs });
  } finally {
    endProgress();
  }
}

/** Holds an exception back until the problems of the text are printed: they are the likelier reason. */
function assessedQuietly(
  assess: (spec: BoothSpec) => ResultDocument,
  spec: BoothSpec,
): { readonly document: ResultDocument } | { readonly failure: unknown } {
  try {
    return { document: assess(spec) };
  } catch (failure) {
    return { failure };
  }
}
