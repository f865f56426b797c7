import type { Statement } from '@boothwright/language';
import type { View } from './view.js';

/** The line that a place belongs to, behind its first word; a place behind the line's last word still does. */
export function statementOnLine(
  { parsed, text }: Pick<View, 'parsed' | 'text'>,
  offset: number,
): Statement | undefined {
  let inside: readonly Statement[] = parsed.tree.statements;
  for (;;) {
    const statement: Statement | undefined = inside.findLast(({ from }) => from < offset);
    if (statement === undefined) return undefined;
    const { block, keyword, headerTo } = statement;
    if (block !== undefined && block.from < offset) {
      if (block.closed && offset >= block.to) return undefined;
      inside = block.statements;
      continue;
    }
    if (offset <= keyword.to) return undefined;
    return /[\n\r;#{]/.test(text.slice(headerTo, offset)) ? undefined : statement;
  }
}
