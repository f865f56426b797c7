import type { Problem, Statement } from '@boothwright/language';
import type { View } from '../view.js';
import type { Candidate } from './candidate.js';
import { indentAt, lineBreak, lineEnd } from './lines.js';

/** Braces and quotes that were forgotten or stand in the wrong place. */
export function closeBlock(view: View, { id, range }: Problem): Candidate[] {
  const { text } = view;
  switch (id) {
    case 'block-not-closed': {
      const statement = find(
        view.parsed.tree.statements,
        ({ from, block }) => from === range.from && block?.closed === false,
      );
      if (statement === undefined) return [];
      return [
        { title: `Close the \`${statement.keyword.word}\` block with \`}\``, changes: [closing(text, statement)] },
      ];
    }
    case 'brace-missing': {
      const opening = { from: range.to, to: range.to, text: ' {' };
      const statement = find(
        view.parsed.tree.statements,
        (each) => each.headerTo === range.to && each.block !== undefined,
      );
      const title = 'Open the block with `{`';
      return [
        { title, changes: [opening] },
        ...(statement === undefined
          ? []
          : [{ title: `${title} and close it with \`}\``, changes: [opening, closing(text, statement)] }]),
      ];
    }
    case 'brace-on-next-line': {
      const before = text.slice(0, range.from);
      const header = before.trimEnd().length;
      const isPlain = !/#/.test(text.slice(text.lastIndexOf('\n', header - 1) + 1, header));
      return isPlain ? [{ title: 'Move the `{` up', changes: [{ from: header, to: range.to, text: ' {' }] }] : [];
    }
    case 'text-not-closed': {
      const marked = text.slice(range.from, range.to).trimEnd();
      const before = /[ \t]*\{[ \t]*$/.exec(marked);
      const ends = [...(before ? [before.index] : []), marked.length];
      return ends.map((end) => ({
        title: 'Close the text with `"`',
        changes: [{ from: range.from + end, to: range.from + end, text: '"' }],
      }));
    }
    default:
      return [];
  }
}

function closing(text: string, { from, headerTo, block }: Statement) {
  const last = block?.statements.at(-1)?.to ?? headerTo;
  const at = lineEnd(text, last);
  return { from: at, to: at, text: `${lineBreak(text)}${indentAt(text, from)}}` };
}

function find(statements: readonly Statement[], wished: (statement: Statement) => boolean): Statement | undefined {
  for (const statement of statements) {
    if (wished(statement)) return statement;
    const inner = find(statement.block?.statements ?? [], wished);
    if (inner !== undefined) return inner;
  }
  return undefined;
}
