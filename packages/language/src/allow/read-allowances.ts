import { limits } from '../limits.js';
import type { Allowance } from '../model/allowance.js';
import type { Problem } from '../model/problem.js';
import type { SourceRange } from '../model/sourced.js';
import { problemTable } from '../problems/problem-table.js';
import type { ParsedFile } from '../syntax/parsed-file.js';
import type { Token } from '../syntax/token.js';

export interface Allowances {
  readonly allowances: readonly Allowance[];
  /** Comments that allow nothing, such as those without a reason. */
  readonly problems: readonly Problem[];
}

const ID = '[a-z][a-z0-9]*(?:-[a-z0-9]+)*';
/** The whole comment, so that a remark such as `# allow 5 mm for the carpet` stays a remark. */
const COMMENT = new RegExp(`^#\\s*allow\\s+(${ID}(?:\\s*,\\s*${ID})*)\\s*(?::(.*))?$`, 's');

/** Every `# allow ID: reason` of a file. */
export function readAllowances({ file, tokens, text }: ParsedFile): Allowances {
  const allowances: Allowance[] = [];
  const problems: Problem[] = [];
  if (!text.includes('allow')) return { allowances, problems };
  for (const [index, token] of tokens.entries()) {
    const match = token.kind === 'comment' ? COMMENT.exec(token.text) : undefined;
    if (!match) continue;
    const ids = match[1]!.split(',').map((id) => id.trim());
    const reason = match[2]?.trim() ?? '';
    // `# allow airflow` is a remark; `# allow third-leaf` lacks its reason.
    if (match[2] === undefined && !ids.every((id) => id.includes('-') || Object.hasOwn(problemTable, id))) continue;
    const covers = lineOf(tokens, index, file);
    let at = token.text.indexOf(match[1]!);
    for (const id of ids) {
      at = token.text.indexOf(id, at);
      const range = { file, from: token.from + at, to: token.from + at + id.length };
      at += id.length;
      if (allowances.length >= limits.problems) return { allowances, problems };
      if (reason !== '') allowances.push({ id, reason, range, covers });
      else problems.push(withoutReason(id, range));
    }
  }
  return { allowances, problems };
}

function withoutReason(id: string, range: SourceRange): Problem {
  return {
    id: 'allow-without-reason',
    severity: 'warning',
    message: `\`${id}\` is allowed without a reason, so it is told all the same`,
    range,
    hint: `write why, like \`# allow ${id}: checked on site\``,
  };
}

/** The line of a comment behind a fact; for a comment on a line of its own, the next line with a fact. */
function lineOf(tokens: readonly Token[], comment: number, file: string): SourceRange {
  const isCode = (token: Token | undefined): boolean =>
    token !== undefined && token.kind !== 'newline' && token.kind !== 'comment';
  let first = comment;
  while (isCode(tokens[first - 1])) first--;
  let last = comment - 1;
  if (first === comment) {
    last = comment;
    while (last < tokens.length && !isCode(tokens[last])) last++;
    first = last;
    while (isCode(tokens[last + 1])) last++;
  }
  const [from, to] = [tokens[first], tokens[Math.min(last, tokens.length - 1)]];
  return { file, from: from?.from ?? tokens.at(-1)!.to, to: to?.to ?? tokens.at(-1)!.to };
}

/** Whether an allowance speaks of what is told at a place: of what begins on its line. */
export function isCovered({ covers }: Allowance, { file, from }: SourceRange): boolean {
  return covers.file === file && covers.from <= from && from <= covers.to;
}
