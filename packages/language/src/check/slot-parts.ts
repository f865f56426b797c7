import type { Part } from '../vocabulary/shape.js';

/** Parts that can be changed on their own, by the name of their slot. */
export function slotParts(parts: readonly Part[]): ReadonlyMap<string, Part> {
  const found = new Map<string, Part>();
  const walk = (part: Part): void => {
    if (part.kind === 'optional') part.parts.forEach(walk);
    else if (part.kind === 'either') part.branches.flat().forEach(walk);
    else if (part.kind === 'size' || part.kind === 'position') {
      for (const axis of part.axes) found.set(axis, { kind: 'quantity', slot: axis, dimension: 'length' });
      if (part.kind === 'size' && part.single)
        found.set(part.single, { kind: 'quantity', slot: part.single, dimension: 'length' });
    } else if ('slot' in part) found.set(part.slot, part);
  };
  parts.forEach(walk);
  return found;
}
