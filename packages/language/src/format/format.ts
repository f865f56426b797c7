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
  // Where not every broken line is known, none of them could be left to the letter.
  if (parsed.tokens.length === 0 || parsed.problems.some((problem) => problem.id === 'too-many-problems')) return text;
  const newline = text.includes('\r\n') ? '\r\n' : '\n';
  const lines = keptLines(linesOf(parsed));
  const columns = alignedStatements(parsed, lines);
  const rendered = alignComments(lines.map((line, i) => render(line, text, columns.get(i))));
  return rendered.length === 0 ? '' : rendered.join(newline) + newline;
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
    const width = lines.slice(i, end).reduce((most, { code }) => Math.max(most, code.length), 0);
    for (; i < end; i++) result.push(`${lines[i]!.code.padEnd(width)}  ${lines[i]!.comment}`);
  }
  return result;
}

/**
 * At most one empty line in a row, none at the start, at the end, after a `{` or before a `}`. Done before anything is
 * put in columns, since an empty line ends a column.
 */
function keptLines(lines: readonly Line[]): readonly Line[] {
  const isEmpty = (line: Line): boolean => line.tokens.length === 0 && !line.verbatim;
  const kept: Line[] = [];
  lines.forEach((line, i) => {
    if (!isEmpty(line)) kept.push(line);
    else {
      const before = kept.at(-1);
      const after = lines[i + 1];
      if (!before || !after || isEmpty(before) || isEmpty(after)) return;
      const opens = !before.verbatim && before.tokens.findLast((token) => token.kind !== 'comment')?.text === '{';
      const closes = !after.verbatim && after.tokens[0]!.text === '}';
      if (!opens && !closes) kept.push(line);
    }
  });
  return kept;
}
