import type { Severities } from '@boothwright/language';
import { reportPages } from '@boothwright/presentation';
import { Command, CommanderError, Option } from 'commander';
import { type CheckCommandOptions, checkCommand } from './check-command.js';
import { type CompareCommandOptions, compareCommand, comparisonFormats } from './compare-command.js';
import { type ExitCode, exitCode } from './exit-code.js';
import { type FiguresCommandOptions, figuresCommand } from './figures-command.js';
import { formatCommand } from './format-command.js';
import { newCommand, questionOptions } from './new-command.js';
import { type PartsFormat, partsCommand } from './parts-command.js';
import { type ReportCommandOptions, reportCommand } from './report-command.js';
import { severityOption } from './severity-option.js';
import type { Terminal } from './terminal.js';
import { unitsOption } from './units-option.js';
import { version } from './version.js';

/** What stands behind `check`, as the parser of options names it. */
interface CheckOptions extends Omit<CheckCommandOptions, 'severities'> {
  readonly severity?: Severities;
}

const exitCodesHelp = `
Exit codes:
  0  every requirement is met by the prediction and the text has no error
  1  a requirement is missed or not assessed, the text has an error, or (format --check) a file would change
  2  the command was called wrongly, or a file is missing, unreadable, too large or no text`;

/** Runs the command with `words` after its name; the answer is the exit code. */
export function run(words: readonly string[], terminal: Terminal): ExitCode {
  let answer: ExitCode = exitCode.met;
  const program = new Command('boothwright')
    .description(
      'Write a recording booth as text; see what gets in, what gets out, how long the air lasts, what it weighs',
    )
    .version(version, '--version', 'print the version')
    .helpOption('-h, --help', 'print this help')
    .addHelpText('after', exitCodesHelp)
    .showHelpAfterError('(boothwright --help lists commands and options)')
    .configureOutput({
      writeOut: (text) => terminal.stdout.write(text),
      writeErr: (text) => terminal.stderr.write(text),
      outputError: (text, write) => write(`boothwright: ${text}`),
    })
    .exitOverride();

  program
    .command('check')
    .description('predict what the booth does and hold it against its requirements')
    .argument('<SPEC...>', 'booth specifications, worked on in this order')
    .addOption(
      new Option('--format <FORMAT>', 'how to print the result').choices(['text', 'json', 'sarif']).default('text'),
    )
    .option('--variant <NAME>', 'work out this variant in place of the base')
    .option('--full', 'print everything the answers rest on, not the answers alone')
    .addOption(unitsOption())
    .addOption(severityOption())
    .addHelpText(
      'after',
      `
The result goes to standard output, problems of the text to standard error. With --format json one SPEC prints one
document, several print a list of documents. --format sarif prints one SARIF 2.1.0 log of problems, missed requirements,
findings and cautions at their places, for tools that show such logs beside the text. A file may \`use\` files below the current folder when it lies there
itself, otherwise below its own folder.
${exitCodesHelp}`,
    )
    .action((specs: string[], { severity: severities, ...options }: CheckOptions) => {
      answer = checkCommand(specs, { ...options, severities }, terminal);
    });

  program
    .command('parts')
    .description('list panels, cuts, layouts of sheets and lengths, what to buy and what to seal')
    .argument('<SPEC>', 'booth specification')
    .addOption(
      new Option('--format <FORMAT>', 'text for the workshop, the cut list as CSV, or everything as JSON')
        .choices(['text', 'csv', 'json'])
        .default('text'),
    )
    .option('--variant <NAME>', 'work out this variant in place of the base')
    .addHelpText(
      'after',
      `
The list goes to standard output, problems of the text to standard error. Panels and cuts need \`panels\` in the booth.
Exit codes:
  0  the parts are listed and the text has no error
  1  the text has an error, or no booth could be worked out
  2  the command was called wrongly, or the file is missing, unreadable, too large or no text`,
    )
    .action((spec: string, options: { format: PartsFormat; variant?: string }) => {
      answer = partsCommand(spec, options, terminal);
    });

  program
    .command('report')
    .description('write one file to hand on: verdict, house, shopping, cutting and moving, cautions, assumptions')
    .argument('<SPEC>', 'booth specification')
    .requiredOption('-o, --output <FILE>', 'the file to write; .html for print and screen, .md for Markdown')
    .option('--variant <NAME>', 'work out this variant in place of the base')
    .addOption(new Option('--page <PAPER>', "set the HTML for this paper, not the printer's own").choices(reportPages))
    .addHelpText(
      'after',
      `
The HTML is one file without scripts that loads nothing. An existing FILE is replaced, whole or not at all. A text with
errors still gets a report of what could be understood, marked at its top. Problems go to standard error too.
Exit codes:
  0  the report is written and the text has no error, whatever the verdict in it
  1  the report is written, and the text has an error or nothing could be worked out
  2  the command was called wrongly, a file is missing or unreadable, or FILE cannot be written`,
    )
    .action((spec: string, options: ReportCommandOptions) => {
      answer = reportCommand(spec, options, terminal);
    });

  program
    .command('figures')
    .description('print the text and below it its figures, one to a line, for a tool that compares lines')
    .argument('<SPEC>', 'booth specification')
    .option('--variant <NAME>', 'work out this variant in place of the base')
    .addHelpText(
      'after',
      `
For \`git diff\`: git config diff.booth.textconv "boothwright figures"
Exit codes:
  0  the figures are printed, whatever the verdict and whatever errors the text has
  2  the command was called wrongly, or the file is missing, unreadable, too large or no text`,
    )
    .action((spec: string, options: FiguresCommandOptions) => {
      answer = figuresCommand(spec, options, terminal);
    });

  program
    .command('compare')
    .description('tell what changed between two specifications, and what that does')
    .argument('<OLD>', 'a specification, or REVISION:PATH as git writes it; alone with --since or --variant')
    .argument('[NEW]', 'the one to hold against it, in the same forms')
    .option('--since <REVISION>', 'compare the file with itself at this revision of git')
    .addOption(
      new Option(
        '--variant <NAME>',
        'compare this variant with the base; twice: one with the other; of two files: in each',
      )
        .default([], 'the base')
        .argParser((name: string, before: readonly string[]) => [...before, name]),
    )
    .addOption(
      new Option('--format <FORMAT>', 'text, Markdown for a review comment, or everything as JSON')
        .choices(comparisonFormats)
        .default('text'),
    )
    .option('--full', 'print every difference, the smallest too')
    .addHelpText(
      'after',
      `
Verdicts come first, then facts of the text, then figures with the largest difference first. Layout, order of blocks and
names of materials and build-ups are no difference. What a text uses is read at the same revision.
Exit codes:
  0  nothing that was met is lost
  1  a requirement that was met is not met any more, or one of the two texts has an error
  2  the command was called wrongly, a file or revision is not there or unreadable, or git is missing`,
    )
    .action(
      (
        old: string,
        now: string | undefined,
        options: Omit<CompareCommandOptions, 'variants'> & { variant: string[] },
      ) => {
        answer = compareCommand(old, now, { ...options, variants: options.variant }, terminal);
      },
    );

  program
    .command('format')
    .description('bring specifications into the one canonical layout, in place')
    .argument('<SPEC...>', 'booth specifications')
    .addOption(new Option('--check', 'change nothing; name the files that would change').conflicts('stdout'))
    .addOption(new Option('--stdout', 'change nothing; print the text in the canonical layout'))
    .addHelpText('after', exitCodesHelp)
    .action((specs: string[], options: { check?: boolean; stdout?: boolean }) => {
      answer = formatCommand(specs, { check: options.check ?? false, stdout: options.stdout ?? false }, terminal);
    });

  const first = program
    .command('new')
    .description('write a complete spec to start from, out of what a tape measure knows')
    .argument('[FILE]', 'the file to write, which must not be there yet; without it the text goes to standard output')
    .addHelpText(
      'after',
      `
Whatever is not answered stands in the text as not stated, with what is taken in its place. Where choices are given,
layers may be written instead if the option says so: --walls "osb 18 mm; gypsum-board 12.5 mm".
Exit codes:
  0  the spec is written
  1  the spec is written, and an answer was left out of it
  2  the command was called wrongly, or the file is there already or cannot be written`,
    );
  for (const option of questionOptions()) first.addOption(option);
  first.action((file: string | undefined, answers: Record<string, string>) => {
    // The parser of options writes `floor-limit` as `floorLimit`.
    const byQuestion = Object.entries(answers).map(([name, answer]) => [
      name.replace(/[A-Z]/g, (letter) => `-${letter.toLowerCase()}`),
      answer,
    ]);
    answer = newCommand(file, Object.fromEntries(byQuestion), terminal);
  });

  try {
    program.parse([...words], { from: 'user' });
  } catch (error) {
    if (!(error instanceof CommanderError)) throw error;
    // Help and version that were asked for end with 0; everything else the parser of options says is misuse.
    return error.exitCode === 0 ? exitCode.met : exitCode.misuse;
  }
  return answer;
}
