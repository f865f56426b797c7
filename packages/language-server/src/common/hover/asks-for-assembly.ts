import { symbolAt } from '@boothwright/language';
import type { Position } from 'vscode-languageserver';
import { statementsAt } from '../statements-at.js';
import type { View } from '../view.js';

/** True where the answer tells of a build-up or a material, and no booth needs to be worked out for it. */
export function asksForAssembly(view: View, position: Position): boolean {
  const offset = view.lines.offsetAt(position);
  const kind = symbolAt(view.checked.symbols, view.file, offset)?.symbol.kind;
  if (kind !== undefined) return kind === 'assembly' || kind === 'material';
  return statementsAt(view.parsed, offset)[0]?.keyword.word === 'assembly';
}
