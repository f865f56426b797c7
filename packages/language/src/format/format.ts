import { parse } from '../syntax/parse.js';
import { alignedStatements } from './aligned-statements.js';
import { join } from './gap.js';
import { type Line, linesOf } from './lines.js';

/**
 * One canonical layout: two blanks per block, one blank between words, values of neighbouring facts and trailing
 * comments in columns, at most one empty line. Keeps every token, every comment and, to the letter, every line that
 * could not be read.
 */
export function format(text: string): string {
  const parsed = parse(text, '');
  if (parsed.tokens.length === 0) return text;
  const newline = text.includes('\r\n') ? '\r\n' : '\n';
  const lines = linesOf(parsed);
  const columns = alignedStatements(parsed, lines);
  const rendered = alignComments(lines.map((line, i) => render(line, text, columns.get(i))));
  const kept = dropEmptyLines(lines, rendered);
  return kept.length === 0 ? '' : kept.join(newline) + newline;
}

interface Rendered {
  readonly code: string;
  readonly comment: string | undefined;
  readonly verbatim: boolean;
}

function render(
  line: Line,
  text: string,
  column: { readonly tokens: number; readonly width: number } | undefined,
): Rendered {
  if (line.verbatim) return { code: text.slice(line.from, line.to), comment: undefined, verbatim: true };
  const code = line.tokens.filter((token) => token.kind !== 'comment');
  const comment = line.tokens.find((token) => token.kind === 'comment')?.text.trimEnd();
  const indent = '  '.repeat(line.depth);
  if (!column) return { code: indent + join(code), comment, verbatim: false };
  const head = join(code.slice(0, column.tokens));
  return { code: `${indent}${head.padEnd(column.width)} ${join(code.slice(column.tokens))}`, comment, verbatim: false };
}

/** Comments behind code stand two blanks after the longest of the neighbouring lines that have one. */
function alignComments(lines: readonly Rendered[]): string[] {
  const result: string[] = [];
  for (let i = 0; i < lines.length; ) {
    const trails = (line: Rendered | undefined): boolean => line?.comment !== undefined && line.code.trim() !== '';
    if (!trails(lines[i])) {
      const { code, comment, verbatim } = lines[i]!;
      result.push(verbatim ? code : (code + (comment ?? '')).trimEnd());
      i++;
      continue;
    }
    let end = i;
    while (trails(lines[end])) end++;
    const width = Math.max(...lines.slice(i, end).map(({ code }) => code.length));
    for (; i < end; i++) result.push(`${lines[i]!.code.padEnd(width)}  ${lines[i]!.comment}`);
  }
  return result;
}

/** At most one empty line in a row, none at the start, at the end, after a `{` or before a `}`. */
function dropEmptyLines(lines: readonly Line[], rendered: readonly string[]): string[] {
  const kept: string[] = [];
  rendered.forEach((line, i) => {
    if (lines[i]!.tokens.length > 0 || lines[i]!.verbatim) kept.push(line);
    else {
      const before = lines.slice(0, i).findLast((other) => other.tokens.length > 0 || other.verbatim);
      const after = lines.slice(i + 1).find((other) => other.tokens.length > 0 || other.verbatim);
      const opens =
        before && !before.verbatim && before.tokens.findLast((token) => token.kind !== 'comment')?.text === '{';
      const closes = after && !after.verbatim && after.tokens[0]!.text === '}';
      if (before && after && !opens && !closes && kept.at(-1) !== '') kept.push('');
    }
  });
  return kept;
}
