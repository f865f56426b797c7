import type { Statement } from '../syntax/tree.js';
import { slotOf } from './block-reader.js';
import { complain } from './context.js';
import { here, type Override, parseValue } from './override.js';

/** Layers that are told by the name of their material, or of the assembly that stands for them. */
export function layersCalled({ block }: Statement, name: string): readonly Statement[] {
  return (block?.statements ?? []).filter(
    (line) => line.fact?.keyword === '' && slotOf(line, 'material', 'word')?.word === name,
  );
}

export function layerNames({ block }: Statement): readonly string[] {
  return (block?.statements ?? []).flatMap((line) =>
    line.fact?.keyword === '' ? (slotOf(line, 'material', 'word')?.word ?? []) : [],
  );
}

/** A layer by its amount, the one thing that it has beside its material. */
export function changeLayer(override: Override, layer: Statement, used: number): Statement | undefined {
  const { ctx, path, statement } = override;
  const bad = path[used];
  if (bad) {
    const message = `\`${path[used - 1]!.word}\` is a layer and has no \`${bad.word}\``;
    complain(ctx, 'unknown-name', here(override, bad), message, {
      hint: `write \`${path
        .slice(0, used)
        .map(({ word }) => word)
        .join('.')} = 12.5 mm\``,
    });
    return undefined;
  }
  const amount = parseValue(override, [{ kind: 'amount', slot: 'amount' }], layer.fact!.example)?.get('amount');
  return amount && { ...layer, slots: new Map([...layer.slots, ['amount', { ...amount, file: statement.file }]]) };
}
