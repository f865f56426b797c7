/**
 * Carries places of an older text over to the present one. Only the stretch between the first and the last character
 * that differ counts as changed; a place wholly inside it shrinks to nothing.
 */
export function shiftResults<T>(value: T, file: string, oldText: string, newText: string): T {
  if (oldText === newText) return value;
  let start = 0;
  const shorter = Math.min(oldText.length, newText.length);
  while (start < shorter && oldText.charCodeAt(start) === newText.charCodeAt(start)) start++;
  let tail = 0;
  while (
    tail < shorter - start &&
    oldText.charCodeAt(oldText.length - 1 - tail) === newText.charCodeAt(newText.length - 1 - tail)
  ) {
    tail++;
  }
  const oldEnd = oldText.length - tail;
  const newEnd = newText.length - tail;
  const move = (offset: number): number => {
    if (offset <= start) return offset;
    if (offset >= oldEnd) return offset + newEnd - oldEnd;
    return Math.min(offset, newEnd);
  };
  // What holds no place that moves is handed on as it is; that is most of a result.
  const walk = (part: unknown): unknown => {
    if (typeof part !== 'object' || part === null) return part;
    if (Array.isArray(part)) {
      if (typeof part[0] !== 'object' || part[0] === null) return part;
      let copy: unknown[] | undefined;
      for (let at = 0; at < part.length; at++) {
        const inner = walk(part[at]);
        if (inner === part[at]) continue;
        copy ??= part.slice();
        copy[at] = inner;
      }
      return copy ?? part;
    }
    if (isPlace(part)) {
      const from = move(part.from);
      const to = move(part.to);
      return part.file !== file || (from === part.from && to === part.to) ? part : { ...part, from, to };
    }
    const before = part as Readonly<Record<string, unknown>>;
    let copy: Record<string, unknown> | undefined;
    for (const key in before) {
      // Nothing of a variant is shown at a place of the text.
      if (key === 'variants') continue;
      const inner = walk(before[key]);
      if (inner === before[key]) continue;
      copy ??= { ...before };
      copy[key] = inner;
    }
    return copy ?? part;
  };
  return walk(value) as T;
}

function isPlace(part: object): part is { file: string; from: number; to: number } {
  const place = part as { file?: unknown; from?: unknown; to?: unknown };
  return typeof place.file === 'string' && typeof place.from === 'number' && typeof place.to === 'number';
}
