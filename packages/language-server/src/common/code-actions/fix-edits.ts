import type { Finding } from '@boothwright/assessment';
import { statementsAt } from '../statements-at.js';
import type { View } from '../view.js';
import type { Candidate } from './candidate.js';
import { intoBlock, withoutStatement } from './lines.js';
import type { TextChange } from './text-change.js';

/** The fix of a finding as a change of this text; undefined where it is told in words only or lies in another file. */
export function fixOfFinding(view: View, { edits = [], id }: Finding): Candidate | undefined {
  if (edits.length === 0) return undefined;
  const changes: TextChange[] = [];
  const said: string[] = [];
  for (const { kind, range, text, from } of edits) {
    if (range.file !== view.file || (from !== null && from.file !== view.file)) return undefined;
    const statement = statementsAt(view.parsed, range.from).at(-1);
    const was = view.text.slice(range.from, range.to);
    if (kind === 'value') {
      const place = valuePlace(view, range);
      changes.push({ ...place, text });
      said.push(`${wordBefore(view, place.from)}${view.text.slice(place.from, place.to)} → ${text}`);
    } else if (kind === 'remove') {
      changes.push(withoutStatement(view.text, range));
      said.push(`without ${nameIn(was)}`);
    } else if (kind === 'fact') {
      const change = statement && intoBlock(view.text, statement, text);
      if (change === undefined) return undefined;
      changes.push(change);
      said.push(text);
    } else if (from !== null) {
      const comes = view.text.slice(from.from, from.to);
      changes.push({ from: range.from, to: range.to, text: comes });
      said.push(nameIn(comes));
    }
  }
  const isMove = edits.every(({ kind }) => kind === 'move');
  // Facts that are put into one block stand at the same place; one after the other they are one change.
  return {
    title: isMove ? `${id}: layers in the order ${said.join(', ')}` : said.join(', '),
    changes: joined(changes),
  };
}

/**
 * Where a value is changed: where it stands, or in its `let` when nothing else uses that, so that the name keeps its
 * meaning.
 */
export function valuePlace(
  view: View,
  range: { readonly from: number; readonly to: number },
): { from: number; to: number } {
  const own = { from: range.from, to: range.to };
  const name = view.text.slice(range.from, range.to);
  const symbol = view.checked.symbols.symbols.find((each) => each.kind === 'let' && each.name === name);
  if (symbol === undefined || symbol.range.file !== view.file) return own;
  // A variant that changes the value goes on doing so.
  const variants = view.parsed.tree.statements.filter(({ keyword }) => keyword.word === 'variant');
  const uses = symbol.references.filter((use) => !variants.some(({ from, to }) => from <= use.from && use.to <= to));
  if (uses.length !== 1) return own;
  const value = view.parsed.tree.statements.find(({ from }) => from === symbol.range.from)?.slots.get('value');
  return value?.kind === 'expression' ? { from: value.from, to: value.to } : own;
}

/** The word that says what a value is, on its line. */
export function wordBefore(view: View, offset: number): string {
  const statement = statementsAt(view.parsed, offset).at(-1);
  if (statement === undefined) return '';
  return `${view.text.slice(statement.from, offset).trim().replace(/\s+/g, ' ').replace(/ =$/, '')} `;
}

function nameIn(text: string): string {
  return text
    .split(/\s*[{\n;]/)[0]!
    .split(/\s+/)
    .slice(0, 2)
    .join(' ');
}

function joined(changes: readonly TextChange[]): TextChange[] {
  const kept: TextChange[] = [];
  for (const change of changes) {
    const at = kept.findIndex(({ from, to }) => from === to && change.from === from && change.to === to);
    if (at < 0) kept.push(change);
    else kept[at] = { ...change, text: kept[at]!.text + change.text };
  }
  return kept;
}
