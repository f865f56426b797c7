import {
  checkParsed,
  contextAt,
  format,
  type ParsedFile,
  type Problem,
  parse,
  type SourceRange,
  symbolAt,
  valueAt,
} from '@boothwright/language';
import { expect } from 'vitest';

const FILE = 'spec.booth';

/** What must hold for any text at all. Throws on the first breach, with the text in the message. */
export function expectSound(text: string): void {
  expectCheckSound(parse(text, FILE));
}

/** The same, and that it can be formatted. */
export function expectAllSound(text: string): void {
  const parsed = parse(text, FILE);
  expectCheckSound(parsed);
  expectLayoutSound(parsed);
}

function expectCheckSound(parsed: ParsedFile): void {
  const { text } = parsed;
  const result = checkParsed(parsed, () => ({ kind: 'missing' }));
  for (const problem of [...parsed.problems, ...result.problems]) expectInside(problem, result.files, text);
  for (const { value } of result.values) expectRangeInside(value.range, result.files, text);
  for (const symbol of result.symbols.symbols)
    for (const range of [symbol.nameRange, symbol.range, ...symbol.references])
      expectRangeInside(range, result.files, text);
  const middle = Math.floor(text.length / 2);
  contextAt(parsed, middle);
  symbolAt(result.symbols, FILE, middle);
  valueAt(result.values, FILE, middle);
}

function expectInside(problem: Problem, files: readonly ParsedFile[], text: string): void {
  expectRangeInside(problem.range, files, text);
  for (const { range } of problem.related ?? []) expectRangeInside(range, files, text);
  if (problem.message === '' || problem.message.endsWith('.'))
    expect.fail(`message \`${problem.message}\` in:\n${text}`);
}

function expectRangeInside(range: SourceRange, files: readonly ParsedFile[], text: string): void {
  const length = files.find((file) => file.file === range.file)?.text.length;
  const inside = length !== undefined && 0 <= range.from && range.from <= range.to && range.to <= length;
  if (!inside) expect.fail(`range ${range.file}:${range.from}..${range.to} lies outside its text:\n${text}`);
}

/** Formatting changes blanks only, and a second time nothing. */
export function expectFormatSound(text: string): void {
  expectLayoutSound(parse(text, FILE));
}

function expectLayoutSound(before: ParsedFile): void {
  const { text } = before;
  const formatted = format(text);
  const twice = format(formatted);
  if (twice !== formatted)
    expect.fail(`formatting twice differs for:\n${text}\n--- once:\n${formatted}\n--- twice:\n${twice}`);
  const after = parse(formatted, FILE);
  if (tokens(before) !== tokens(after))
    expect.fail(`formatting changes the tokens of:\n${text}\n--- to:\n${formatted}`);
  if (shape(before) !== shape(after)) expect.fail(`formatting changes the meaning of:\n${text}\n--- to:\n${formatted}`);
  if (ids(before) !== ids(after)) expect.fail(`formatting changes what is wrong with:\n${text}\n--- to:\n${formatted}`);
}

/** Tokens without the empty lines, which may come and go, and the blanks behind comments. */
function tokens(parsed: ParsedFile): string {
  const list = parsed.tokens.map((token) =>
    token.kind === 'newline' ? '\n' : `${token.kind}:${token.kind === 'comment' ? token.text.trimEnd() : token.text}`,
  );
  return list
    .join(' ')
    .replace(/(\n ?)+/g, '\n')
    .trim();
}

const PLACES = new Set(['from', 'to', 'headerTo', 'spaced', 'operatorSpan']);

/** The tree without where its parts stand: what the text says. */
function shape({ tree }: ParsedFile): string {
  return JSON.stringify(tree, (key, value: unknown) => {
    if (PLACES.has(key)) return undefined;
    if (key === 'fact') return (value as { readonly keyword: string } | undefined)?.keyword;
    return value instanceof Map ? [...value] : value;
  });
}

function ids(parsed: ParsedFile): string {
  return parsed.problems.map((problem) => problem.id).join(' ');
}
