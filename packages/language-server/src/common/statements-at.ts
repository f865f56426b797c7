import type { ParsedFile, Statement } from '@boothwright/language';

/** The statements that hold a place, the outermost first. */
export function statementsAt(parsed: ParsedFile, offset: number): readonly Statement[] {
  const found: Statement[] = [];
  let inside: readonly Statement[] = parsed.tree.statements;
  for (;;) {
    const next = inside.find(({ from, to }) => from <= offset && offset <= to);
    if (next === undefined) return found;
    found.push(next);
    inside = next.block?.statements ?? [];
  }
}
