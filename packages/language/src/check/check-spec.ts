import { parse } from '../syntax/parse.js';
import { parseAgain } from '../syntax/parse-again.js';
import type { ParsedFile } from '../syntax/parsed-file.js';
import { checkParsed } from './check-parsed.js';
import type { CheckOptions, CheckResult } from './check-result.js';
import type { SourceHost } from './source-host.js';

/** Reads a spec and what it uses; the spec is always returned, with whatever could be understood. Never throws. */
export function checkSpec(entry: string, host: SourceHost, options: CheckOptions = {}): CheckResult {
  const read = (text: string, path: string): ParsedFile => {
    const before = options.before?.find(({ file }) => file === path);
    return before === undefined ? parse(text, path) : parseAgain(text, before);
  };
  const answer = host.read(entry);
  if (answer.kind !== 'text') {
    const reason = answer.kind === 'missing' ? 'there is no such file' : answer.reason;
    const empty = {
      ...parse('', entry),
      problems: [
        {
          id: 'file-unreadable',
          severity: 'error',
          message: `\`${entry}\` cannot be read: ${reason}`,
          range: { file: entry, from: 0, to: 0 },
        },
      ],
    } as const;
    return checkParsed(empty, () => ({ kind: 'missing' }), options);
  }
  return checkParsed(
    read(answer.text, entry),
    (path) => {
      const used = host.read(path);
      return used.kind === 'text' ? read(used.text, path) : used;
    },
    options,
  );
}
