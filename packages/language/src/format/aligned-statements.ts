import type { ParsedFile } from '../syntax/parsed-file.js';
import type { Statement } from '../syntax/tree.js';
import { join } from './gap.js';
import type { Line } from './lines.js';

export interface Column {
  /** How many tokens stand before the value. */
  readonly tokens: number;
  /** Width that they are filled up to. */
  readonly width: number;
}

interface Candidate {
  readonly line: number;
  readonly tokens: number;
  readonly group: string;
  readonly width: number;
}

/** Lines whose values stand in a column with those of their neighbours, by line number. */
export function alignedStatements(parsed: ParsedFile, lines: readonly Line[]): ReadonlyMap<number, Column> {
  const lineAt = new Map<number, number>();
  lines.forEach((line, i) => {
    for (const token of line.tokens) lineAt.set(token.from, i);
  });
  const candidates = collect(parsed.tree.statements, 'file', lines, lineAt, runs(lines));
  const widths = new Map<string, number>();
  for (const { group, width } of candidates) widths.set(group, Math.max(widths.get(group) ?? 0, width));
  return new Map(candidates.map(({ line, tokens, group }) => [line, { tokens, width: widths.get(group)! }]));
}

/** Number of the stretch between empty lines that each line belongs to. */
function runs(lines: readonly Line[]): readonly number[] {
  let run = 0;
  return lines.map((line) => {
    if (line.tokens.length === 0) run++;
    return run;
  });
}

function collect(
  statements: readonly Statement[],
  block: string,
  lines: readonly Line[],
  lineAt: ReadonlyMap<number, number>,
  run: readonly number[],
  result: Candidate[] = [],
): readonly Candidate[] {
  for (const statement of statements) {
    const i = lineAt.get(statement.from);
    if (i === undefined) continue;
    if (statement.block) {
      collect(statement.block.statements, `${block}/${statement.from}`, lines, lineAt, run, result);
      continue;
    }
    const line = lines[i]!;
    const tokens = headTokens(statement, line);
    if (tokens === undefined) continue;
    const group = `${block}:${run[i]}:${block === 'file' ? statement.keyword.word.split(' ')[0] : ''}`;
    result.push({ line: i, tokens, group, width: join(line.tokens.slice(0, tokens)).length });
  }
  return result;
}

/** Tokens before the value; undefined when the line is not one plain fact. */
function headTokens(statement: Statement, line: Line): number | undefined {
  if (line.tokens[0]?.from !== statement.from) return undefined;
  const code = line.tokens.filter((token) => token.kind !== 'comment');
  const { fact } = statement;
  if (line.verbatim || !fact || !statement.complete || code.at(-1)!.to > statement.to) return undefined;
  if (fact.block || code.some((token) => token.text === ';')) return undefined;
  if (fact.keyword === 'let' || (fact.keyword === '' && code.some((token) => token.text === '=')))
    return code.findIndex((token) => token.text === '=');
  if (fact.declares) return undefined;
  // A requirement is a phrase: its sign stands in the column, behind all that says what is required.
  if (fact.keyword.startsWith('require ')) {
    const sign = code.findIndex((token) => token.text === '<=' || token.text === '>=' || token.text === 'within');
    return sign > 0 ? sign : undefined;
  }
  const head = fact.keyword === '' ? 1 : fact.keyword.split(' ').length;
  return code.length > head ? head : undefined;
}
