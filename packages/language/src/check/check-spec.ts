import { parse } from '../syntax/parse.js';
import { checkParsed } from './check-parsed.js';
import type { CheckOptions, CheckResult } from './check-result.js';
import type { SourceHost } from './source-host.js';

/** Reads a spec and what it uses; the spec is always returned, with whatever could be understood. Never throws. */
export function checkSpec(entry: string, host: SourceHost, options: CheckOptions = {}): CheckResult {
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
    parse(answer.text, entry),
    (path) => {
      const used = host.read(path);
      return used.kind === 'text' ? parse(used.text, path) : used;
    },
    options,
  );
}
