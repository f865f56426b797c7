import type { Statement } from '@boothwright/language';
import type { TextChange } from './text-change.js';

export function lineStart(text: string, offset: number): number {
  return text.lastIndexOf('\n', offset - 1) + 1;
}

export function lineEnd(text: string, offset: number): number {
  const end = text.indexOf('\n', offset);
  const at = end < 0 ? text.length : end;
  return text[at - 1] === '\r' && at > offset ? at - 1 : at;
}

/** The line break that a text uses. */
export function lineBreak(text: string): string {
  return text.includes('\r\n') ? '\r\n' : '\n';
}

export function indentAt(text: string, offset: number): string {
  return /^[ \t]*/.exec(text.slice(lineStart(text, offset), offset))![0];
}

/** Takes a statement out: with its lines where it stands alone on them, else with the `;` that joins it. */
export function withoutStatement(
  text: string,
  { from, to }: { readonly from: number; readonly to: number },
): TextChange {
  const start = lineStart(text, from);
  const end = lineEnd(text, to);
  const behind = text.slice(to, end);
  const isAlone = /^[ \t]*$/.test(text.slice(start, from)) && /^[ \t;]*(#.*)?$/.test(behind);
  if (isAlone) {
    const next = text.indexOf('\n', to);
    return { from: start, to: next < 0 ? text.length : next + 1, text: '' };
  }
  const joint = /^[ \t]*;[ \t]*/.exec(behind);
  if (joint) return { from, to: to + joint[0].length, text: '' };
  const before = /[ \t]*;?[ \t]*$/.exec(text.slice(start, from))![0];
  return { from: from - before.length, to, text: before.includes(';') || /^[ \t]*$/.test(behind) ? '' : ' ' };
}

/** Puts a line at the end of a block, in the way in which the block is written; undefined without a closed block. */
export function intoBlock(text: string, { block, from }: Statement, line: string): TextChange | undefined {
  if (block === undefined || !block.closed || text[block.to - 1] !== '}') return undefined;
  const brace = block.to - 1;
  const last = block.statements.at(-1);
  const isOneLine = !text.slice(block.from, block.to).includes('\n');
  if (isOneLine) {
    const at = last?.to ?? block.from + 1;
    return { from: at, to: at, text: last === undefined ? ` ${line} ` : `; ${line}` };
  }
  const indent = last === undefined ? `${indentAt(text, from)}  ` : indentAt(text, last.from);
  const at = lineStart(text, brace);
  const isBraceAlone = /^[ \t]*$/.test(text.slice(at, brace));
  if (isBraceAlone) return { from: at, to: at, text: `${indent}${line}${lineBreak(text)}` };
  return {
    from: brace,
    to: brace,
    text: `${lineBreak(text)}${indent}${line}${lineBreak(text)}${indentAt(text, from)}`,
  };
}

/** Where a declaration is put in: behind the lines that use other files. */
export function behindUses(text: string, statements: readonly Statement[]): number {
  const uses = statements.filter(({ keyword }) => keyword.word.startsWith('use'));
  const last = uses.at(-1);
  if (last === undefined) return lineStart(text, Math.min(...statements.map(({ from }) => from), text.length));
  const next = text.indexOf('\n', last.to);
  return next < 0 ? text.length : next + 1;
}
