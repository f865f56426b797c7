import type { Statement } from '@boothwright/language';
import { type FoldingRange, FoldingRangeKind } from 'vscode-languageserver';
import type { View } from './view.js';

/** Blocks that span lines, and runs of comment lines. */
export function foldingRanges(view: View): FoldingRange[] {
  const ranges: FoldingRange[] = [];
  const blocks = (statements: readonly Statement[]): void => {
    for (const { block } of statements) {
      if (block === undefined) continue;
      const start = view.lines.positionAt(block.from).line;
      // The line of the closing brace stays in sight.
      const end = view.lines.positionAt(block.to).line - (block.closed ? 1 : 0);
      if (end > start) ranges.push({ startLine: start, endLine: end });
      blocks(block.statements);
    }
  };
  blocks(view.parsed.tree.statements);
  return [...ranges, ...commentRuns(view)];
}

function commentRuns(view: View): FoldingRange[] {
  const runs: { startLine: number; endLine: number }[] = [];
  for (const token of view.parsed.tokens) {
    if (token.kind !== 'comment') continue;
    const { line, character } = view.lines.positionAt(token.from);
    const alone = view.text.slice(token.from - character, token.from).trim() === '';
    if (!alone) continue;
    const last = runs.at(-1);
    if (last !== undefined && last.endLine === line - 1) last.endLine = line;
    else runs.push({ startLine: line, endLine: line });
  }
  return runs.filter((run) => run.endLine > run.startLine).map((run) => ({ ...run, kind: FoldingRangeKind.Comment }));
}
