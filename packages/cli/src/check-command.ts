import { type Assessor, createAssessor, type ResultDocument } from '@boothwright/assessment';
import type { Problem, Severities } from '@boothwright/language';
import {
  type DisplayUnits,
  renderCheckText,
  renderSarif,
  type SarifInput,
  showing,
  shownAtFirst,
} from '@boothwright/presentation';
import { type ExitCode, exitCode, worst } from './exit-code.js';
import { guarded } from './guarded.js';
import { grave } from './problems-text.js';
import { styleOf, type Terminal } from './terminal.js';
import { toJson } from './to-json.js';
import { version } from './version.js';
import { withCheckedSpec } from './with-checked-spec.js';

export interface CheckCommandOptions {
  readonly format: 'text' | 'json' | 'sarif';
  readonly variant?: string | undefined;
  /** All that the result rests on, besides the answers. */
  readonly full?: boolean | undefined;
  /** In which units the text tells figures; JSON and SARIF are as they always are. */
  readonly units?: DisplayUnits | undefined;
  /** How the warnings of the text are told, by identifier. */
  readonly severities?: Severities | undefined;
}

interface Checked {
  readonly read: SarifInput;
  readonly code: ExitCode;
}

/** `check`: the result of every specification to standard output, problems of the texts to standard error. */
export function checkCommand(specs: readonly string[], options: CheckCommandOptions, terminal: Terminal): ExitCode {
  const codes: ExitCode[] = [];
  // One memory for all: specifications that share build-ups work them out once.
  const assessor = createAssessor();
  const documents: SarifInput[] = [];
  for (const spec of specs) {
    const done = guarded(spec, terminal, () => checkOne(spec, options, terminal, assessor, codes.length > 0));
    codes.push(typeof done === 'number' ? done : done.code);
    if (typeof done !== 'number') documents.push(done.read);
  }
  if (options.format === 'json') {
    const results = documents.map(({ result }) => result);
    const printed = specs.length > 1 ? results : results[0];
    if (printed) terminal.stdout.write(`${toJson(printed)}\n`);
  } else if (options.format === 'sarif' && documents.length > 0) {
    terminal.stdout.write(`${JSON.stringify(renderSarif(documents, version), null, 2)}\n`);
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
  return withCheckedSpec(spec, options, terminal, assessor.assess, ({ result, problems, texts, shownAs }) => {
    if (options.format === 'text') {
      const titled = { ...result, file: shownAs(result.file) };
      const style = styleOf(terminal.stdout, terminal.env, options.full ? 'full' : 'short');
      const shown = { ...shownAtFirst, units: options.units ?? shownAtFirst.units };
      const text = showing(shown, () => renderCheckText(titled, problems, style, options.variant));
      terminal.stdout.write(follows ? `\n${text}` : text);
    }
    return { read: { result, problems, texts, shownAs }, code: verdictOf(result, problems) };
  });
}

function verdictOf(result: ResultDocument, problems: readonly Problem[]): ExitCode {
  const failed = result.requirements.some(({ verdict }) => verdict !== 'met');
  return failed || problems.some(grave) ? exitCode.missed : exitCode.met;
}
