import type { Slot, Statement } from '../syntax/tree.js';
import type { Fact, Part } from '../vocabulary/shape.js';

/**
 * The slots of a line that is written anew in a variant, with what the base says in the parts that the new line leaves out:
 * `budget.boards = 9 at 40 EUR` says nothing about what the boards are for, so they stay what they were. Only parts that
 * begin with a word of their own count; an amount belongs to the material before it.
 */
export function withUnwritten(
  fact: Fact,
  written: ReadonlyMap<string, Slot>,
  existing: Statement | undefined,
): Map<string, Slot> {
  const slots = new Map(written);
  if (!existing) return slots;
  const keep = (name: string, slot: Slot): void => {
    slots.set(name, { ...slot, file: slot.file ?? existing.file });
  };
  for (const part of fact.parts) {
    if (part.kind === 'optional' && isTold(part.parts[0]!)) {
      const names = [...slotsOf(part)];
      if (names.some((name) => written.has(name))) continue;
      for (const name of names) {
        const slot = existing.slots.get(name);
        if (slot) keep(name, slot);
      }
    } else if (part.kind === 'price') {
      const [now, before] = [written.get(part.slot), existing.slots.get(part.slot)];
      if (now?.kind === 'price' && before?.kind === 'price' && !now.per)
        slots.set(part.slot, { ...now, per: before.per });
    }
  }
  return slots;
}

function isTold(first: Part): boolean {
  return first.kind === 'literal' || first.kind === 'choice';
}

function slotsOf(part: Part): ReadonlySet<string> {
  const names = new Set<string>();
  const walk = (inner: Part): void => {
    if (inner.kind === 'optional') inner.parts.forEach(walk);
    else if (inner.kind === 'either') inner.branches.flat().forEach(walk);
    else if (inner.kind === 'size' || inner.kind === 'position') for (const axis of inner.axes) names.add(axis);
    else if (inner.kind === 'literal') names.add(inner.word);
    else if ('slot' in inner) names.add(inner.slot);
  };
  walk(part);
  return names;
}
