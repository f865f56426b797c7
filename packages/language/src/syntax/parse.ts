import { limits } from '../limits.js';
import type { Problem } from '../model/problem.js';
import type { SourceRange } from '../model/sourced.js';
import type { Expectation } from '../symbols/context.js';
import { lex } from './lex.js';
import { parseFileStatements } from './parse-block.js';
import type { ParsedFile } from './parsed-file.js';
import type { ParserState } from './parser-state.js';
import type { Token } from './token.js';
import type { Statement } from './tree.js';

/**
 * Reads a text. Never throws: the tree holds what could be understood, also of half-typed lines, and the problems what
 * could not. One broken line costs that line.
 */
export function parse(text: string, file: string): ParsedFile {
  const refusal = refuse(text, file);
  if (refusal)
    return {
      file,
      text,
      tokens: [],
      tree: { kind: 'file', file, statements: [], from: 0, to: text.length },
      problems: [refusal],
    };
  const tokens = lex(text);
  const state = parserState(text, file, tokens);
  reportForeignComments(state, tokens);
  const statements: Statement[] = parseFileStatements(state);
  statements.push(...state.strays);
  const problems =
    statements.length === 0 && state.problems.length === 0
      ? [emptyFile(file, text)]
      : capped(state.problems, { file, text });
  return { file, text, tokens, tree: { kind: 'file', file, statements, from: 0, to: text.length }, problems };
}

/** Comments that start as in other languages: told once, with the other places beside it. */
function reportForeignComments(state: ParserState, tokens: readonly Token[]): void {
  const [first, ...others] = tokens.filter((token) => token.kind === 'comment' && token.text.startsWith('//'));
  if (!first) return;
  const place = ({ from }: Token): SourceRange => ({ file: state.file, from, to: from + 2 });
  state.problems.push({
    id: 'foreign-comment',
    severity: 'error',
    message: 'a comment starts with `#`, not with `//`',
    range: place(first),
    hint: `write \`#${first.text.slice(2, 30).trimEnd()}\``,
    related: others.slice(0, limits.related).map((token) => ({ range: place(token), message: 'here too' })),
  });
}

export function parserState(
  text: string,
  file: string,
  tokens: readonly Token[],
  probe?: { index: number; found: Expectation[] },
): ParserState {
  const code = tokens.filter((token) => token.kind !== 'comment');
  return { file, text, tokens: code, index: 0, problems: [], statements: 0, strays: [], passed: [], probe };
}

/** Texts that are not read at all: too large, or no text. */
export function refuse(text: string, file: string): Problem | undefined {
  if (text.length > limits.fileSize)
    return {
      id: 'file-too-large',
      severity: 'error',
      message: `this file has ${text.length} characters; at most ${limits.fileSize} are read`,
      range: { file, from: 0, to: 0 },
    };
  let odd = 0;
  for (let i = 0; i < text.length; i++) {
    const code = text.charCodeAt(i);
    if (code === 0 || code === 0xfffd || (code < 32 && code !== 9 && code !== 10 && code !== 13 && code !== 12)) odd++;
    if (code === 0) break;
  }
  const isBinary = text.includes('\0') || odd > Math.max(8, text.length / 20);
  if (!isBinary) return undefined;
  return {
    id: 'not-text',
    severity: 'error',
    message: 'this is no text',
    range: { file, from: 0, to: Math.min(1, text.length) },
    hint: 'a spec is plain text in UTF-8',
  };
}

function emptyFile(file: string, text: string): Problem {
  return {
    id: 'empty-file',
    severity: 'warning',
    message: 'nothing is described here yet',
    range: { file, from: 0, to: Math.min(1, text.length) },
    hint: 'start with `use catalog`, then an `assembly` with its layers from outside to inside',
  };
}

/** What tells that a part of the text is not looked at. */
const BOUNDS: ReadonlySet<string> = new Set(['too-many-lines', 'too-many-files', 'too-many-variants']);

/** The first problems, and one that says how many more there are. */
export function capped(
  problems: readonly Problem[],
  { file, text }: { readonly file: string; readonly text: string },
): readonly Problem[] {
  const kept = problems.filter((problem) => problem.id !== 'too-many-problems');
  if (kept.length <= limits.problems) return problems;
  // That the rest was not read at all must not be lost among what is wrong with the beginning.
  const bounds = kept.slice(limits.problems).filter(({ id }) => BOUNDS.has(id));
  const message = `${kept.length - limits.problems - bounds.length} more problems are not listed`;
  const range = { file, from: 0, to: Math.min(1, text.length) };
  return [...kept.slice(0, limits.problems), ...bounds, { id: 'too-many-problems', severity: 'error', message, range }];
}
