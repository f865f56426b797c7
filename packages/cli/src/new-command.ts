import fs from 'node:fs';
import path from 'node:path';
import { type Answers, firstSpec, questions } from '@boothwright/language';
import { printable } from '@boothwright/presentation';
import { Option } from 'commander';
import { complaintText } from './complaint.js';
import { type ExitCode, exitCode } from './exit-code.js';
import { guarded } from './guarded.js';
import { styleOf, type Terminal } from './terminal.js';

/** One option for each question that a first spec is written from. */
export function questionOptions(): Option[] {
  return questions.map(({ name, asks, example, choices, free }) => {
    const offered = (choices ?? []).map(({ value }) => value).join(', ');
    const own = choices === undefined || free === true ? `such as ${example}` : '';
    return new Option(`--${name} <ANSWER>`, `${asks} (${[offered, own].filter(Boolean).join('; or ')})`);
  });
}

/**
 * `new`: writes a complete spec from what is known, to a file that is not there yet or to standard output. An answer that
 * cannot stand in it is told on standard error and in the text.
 */
export function newCommand(file: string | undefined, answers: Answers, terminal: Terminal): ExitCode {
  return guarded(file ?? 'new', terminal, () => {
    const style = styleOf(terminal.stderr, terminal.env);
    const { text, refused } = firstSpec(answers);
    if (file === undefined) terminal.stdout.write(text);
    else {
      const failure = writeNew(path.resolve(terminal.cwd, file), text);
      if (failure !== undefined) {
        terminal.stderr.write(complaintText({ ...failure, place: file }, style));
        return exitCode.misuse;
      }
      terminal.stdout.write(`${printable(file)}: written; check it with boothwright check ${printable(file)}\n`);
    }
    for (const { name, answer, message } of refused) {
      const complaint = {
        id: 'answer-left-out',
        place: `--${name}`,
        message: `\`${answer}\` was left out: ${message}`,
      };
      terminal.stderr.write(complaintText(complaint, style));
    }
    return refused.length === 0 ? exitCode.met : exitCode.missed;
  });
}

function writeNew(file: string, text: string) {
  try {
    fs.writeFileSync(file, text, { flag: 'wx' });
    return undefined;
  } catch (error) {
    const { code } = error as NodeJS.ErrnoException;
    if (code === 'EEXIST')
      return { id: 'file-exists', message: 'there is such a file already', help: 'name one that is not there yet' };
    return { id: 'unwritable-file', message: `the file cannot be written (${code ?? String(error)})` };
  }
}
