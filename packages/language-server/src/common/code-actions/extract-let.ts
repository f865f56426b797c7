import type { Slot, Statement } from '@boothwright/language';
import { statementsAt } from '../statements-at.js';
import type { View } from '../view.js';
import type { Candidate } from './candidate.js';
import { behindUses, lineBreak } from './lines.js';

/** Gives the value at the cursor a name of its own, which a variant can change. */
export function extractLet(view: View, from: number, to: number): Candidate[] {
  const path = statementsAt(view.parsed, from);
  const statement = path.at(-1);
  if (statement === undefined || statement.keyword.word === 'let' || path[0]?.keyword.word === 'variant') return [];
  const found = [...statement.slots].find(
    ([, slot]) => slot.kind === 'expression' && slot.from <= from && to <= slot.to && slot.file === undefined,
  );
  if (found === undefined) return [];
  const [, slot] = found as [string, Extract<Slot, { kind: 'expression' }>];
  if (slot.expression.kind !== 'literal' && slot.expression.kind !== 'binary') return [];
  const value = view.text.slice(slot.from, slot.to);
  const name = freeName(view, nameFor(path, found[0], view.text));
  const at = behindUses(view.text, view.parsed.tree.statements);
  return [
    {
      title: `Name \`${value}\` with \`let ${name}\``,
      changes: [
        { from: at, to: at, text: `let ${name} = ${value}${lineBreak(view.text)}` },
        { from: slot.from, to: slot.to, text: name },
      ],
    },
  ];
}

/** After what it belongs to: `entry-width`, `wall-air`. */
function nameFor(path: readonly Statement[], slot: string, text: string): string {
  const statement = path.at(-1)!;
  const owner = path.at(-2)?.slots.get('name');
  const head = owner?.kind === 'word' ? `${owner.word}-` : '';
  const first =
    statement.keyword.word === ''
      ? text.slice(statement.from, statement.headerTo).split(/\s/)[0]!
      : statement.keyword.word;
  const part = ['value', 'amount', 'thickness'].includes(slot) || first === slot ? '' : `-${slot}`;
  const name = `${head}${first.replace(/ /g, '-')}${part}`.toLowerCase().replace(/[^a-z0-9-]/g, '');
  return /^[a-z][a-z0-9]*(-[a-z0-9]+)*$/.test(name) ? name : 'value';
}

function freeName(view: View, wanted: string): string {
  const taken = new Set(view.checked.symbols.symbols.map(({ name }) => name));
  let name = wanted;
  for (let i = 2; taken.has(name); i++) name = `${wanted}-${i}`;
  return name;
}
