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
  const walk = (part: unknown): unknown => {
    if (Array.isArray(part)) return typeof part[0] === 'object' && part[0] !== null ? part.map(walk) : part;
    if (typeof part !== 'object' || part === null) return part;
    if (isPlace(part)) return part.file === file ? { ...part, from: move(part.from), to: move(part.to) } : part;
    return Object.fromEntries(Object.entries(part).map(([key, inner]) => [key, walk(inner)]));
  };
  return walk(value) as T;
}

function isPlace(part: object): part is { file: string; from: number; to: number } {
  const place = part as { file?: unknown; from?: unknown; to?: unknown };
  return typeof place.file === 'string' && typeof place.from === 'number' && typeof place.to === 'number';
}
