import { isSeverityLevel, type Severities, severityComplaint, severityLevels } from '@boothwright/language';
import { InvalidArgumentError, Option } from 'commander';

/** `--severity ID=LEVEL`, as often as wished; the last word on an identifier counts. */
export function severityOption(): Option {
  return new Option(
    '--severity <ID=LEVEL>',
    `tell warnings with this identifier as one of ${severityLevels.join(', ')}; may be given several times`,
  ).argParser(addSeverity);
}

function addSeverity(word: string, before: Severities | undefined): Severities {
  const at = word.indexOf('=');
  if (at < 1) throw new InvalidArgumentError('Write an identifier, `=` and a level, e.g. value-unusual=off.');
  const id = word.slice(0, at);
  const level = word.slice(at + 1);
  const complaint = severityComplaint(id, level);
  if (complaint !== undefined || !isSeverityLevel(level)) throw new InvalidArgumentError(sentence(complaint ?? ''));
  return { ...before, [id]: level };
}

/** The parser of options puts it behind a sentence of its own. */
const sentence = (text: string) => `${text.slice(0, 1).toUpperCase()}${text.slice(1)}${text.endsWith('?') ? '' : '.'}`;
