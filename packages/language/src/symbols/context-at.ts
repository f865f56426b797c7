import { parserState } from '../syntax/parse.js';
import { parseFileStatements } from '../syntax/parse-block.js';
import type { ParsedFile } from '../syntax/parsed-file.js';
import type { Token } from '../syntax/token.js';
import type { Statement } from '../syntax/tree.js';
import type { BlockName, Fact } from '../vocabulary/shape.js';
import type { Context, Expectation } from './context.js';

/** Which block a place is in and what may stand there, found by reading the text with the parser itself. */
export function contextAt(parsed: ParsedFile, offset: number): Context {
  const { block, fact } = surroundings(parsed.tree.statements, offset);
  const touching = parsed.tokens.find((token) => token.from < offset && offset <= token.to && token.kind !== 'newline');
  const quiet =
    touching !== undefined &&
    (touching.kind === 'comment' ||
      (touching.kind === 'string' && offset < touching.to) ||
      (touching.kind === 'string' && !touching.text.endsWith('"')));
  const replace = touching?.kind === 'word' ? { from: touching.from, to: touching.to } : { from: offset, to: offset };
  if (quiet || parsed.tokens.length === 0)
    return { block, fact, expects: [], replace: { from: offset, to: offset }, quiet };
  const found: Expectation[] = [];
  const code = parsed.tokens.filter((token) => token.kind !== 'comment');
  const index = code.findIndex(
    (token) => (token.kind === 'word' ? token.from < offset && offset <= token.to : false) || token.from >= offset,
  );
  const state = parserState(parsed.text, parsed.file, parsed.tokens, { index, found });
  state.index = Math.max(0, Math.min(index, firstToken(code, startOfStatement(parsed.tree.statements, offset))));
  parseFileStatements(state);
  return { block, fact, expects: unique(found), replace, quiet };
}

/** Where the outermost statement that reaches to a place starts: nothing before it matters for what may stand there. */
function startOfStatement(statements: readonly Statement[], offset: number): number {
  let start = 0;
  for (const { from } of statements) {
    // What was found inside of blocks stands at the end of the list.
    if (from >= offset || from < start) break;
    start = from;
  }
  return start;
}

function firstToken(tokens: readonly Token[], from: number): number {
  const found = tokens.findIndex((token) => token.from >= from);
  return found < 0 ? tokens.length - 1 : found;
}

function surroundings(statements: readonly Statement[], offset: number): { block: BlockName; fact: Fact | undefined } {
  let block: BlockName = 'file';
  let fact: Fact | undefined;
  const visit = (list: readonly Statement[], limit: number): void => {
    list.forEach((statement, i) => {
      // A block that is still open reaches as far as the next statement.
      const isOpen = statement.block && !statement.block.closed;
      const end = isOpen ? (list[i + 1]?.from ?? limit) : statement.to;
      if (offset < statement.from || offset > end) return;
      const inside = statement.block && offset > statement.block.from && (isOpen || offset < statement.block.to);
      if (inside) {
        block = statement.block!.name;
        fact = undefined;
        visit(statement.block!.statements, end);
      } else fact = statement.fact;
    });
  };
  visit(statements, Number.POSITIVE_INFINITY);
  return { block, fact };
}

function unique(expectations: readonly Expectation[]): readonly Expectation[] {
  return [
    ...new Map(
      expectations.map((expectation) => [
        JSON.stringify(expectation, (key, value) =>
          key === 'facts' ? (value as readonly Fact[]).map((f) => f.keyword) : value,
        ),
        expectation,
      ]),
    ).values(),
  ];
}
