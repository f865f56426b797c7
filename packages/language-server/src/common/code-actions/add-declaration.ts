import type { Problem } from '@boothwright/language';
import type { View } from '../view.js';
import type { Candidate } from './candidate.js';
import { behindUses, lineBreak } from './lines.js';

/** What a name stands for that is declared nowhere: `use catalog`, or a declaration to be filled in. */
export function addDeclaration(view: View, { id, message, range }: Problem): Candidate[] {
  const { text, parsed } = view;
  const end = lineBreak(text);
  const { statements } = parsed.tree;
  if (id === 'catalogue-missing') {
    const at = statements[0] === undefined ? 0 : text.lastIndexOf('\n', statements[0].from - 1) + 1;
    return [{ title: 'Add `use catalog`', changes: [{ from: at, to: at, text: `use catalog${end}` }] }];
  }
  if (id !== 'unknown-name') return [];
  const name = text.slice(range.from, range.to);
  const lines = declarationOf(message, name);
  if (lines === undefined) return [];
  const at = behindUses(text, statements);
  const put = `${lines.join(end)}${end}`;
  const title = `Declare \`${lines[0]!.replace(/\s*(\{|#.*)$/, '')}\`, to be filled in`;
  return [{ title, changes: [{ from: at, to: at, text: put }], asks: true }];
}

function declarationOf(message: string, name: string): readonly string[] | undefined {
  if (message.startsWith('no value ')) return [`let ${name} =  # a value with its unit`];
  if (message.startsWith('no assembly ')) return [`assembly ${name} {`, '  # its layers from outside to inside', '}'];
  if (message.startsWith('no material ')) return [`material ${name} {`, '  # its kind and figures', '}'];
  return undefined;
}
