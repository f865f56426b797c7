/** Where an offset of an older text is in a later one. */
type Move = (offset: number) => number;

/**
 * Carries places of an older text over to the present one. Only the stretch between the first and the last character
 * that differ counts as changed; a place wholly inside it shrinks to nothing. Each part of the value is carried over when
 * it is first looked at: a keystroke is answered with the findings and not with the curves.
 */
export function shiftResults<T extends object>(value: T, file: string, oldText: string, newText: string): T {
  if (oldText === newText) return value;
  const earlier = waiting.get(value) as Shifted<T> | undefined;
  // What nobody looked at since the last change is carried over both at once.
  const from: Shifted<T> = earlier ?? { value, file, moves: [], done: new Map() };
  const moves = [...from.moves, moveBetween(oldText, newText)];
  return lazily({ value: from.value, file, moves, done: new Map(from.done) });
}

/** The same value with other parts, without looking at what is still to be carried over. */
export function withParts<T extends object>(value: T, parts: Partial<T>): T {
  const shifted = waiting.get(value) as Shifted<T> | undefined;
  if (shifted === undefined) return { ...value, ...parts };
  const done = new Map(shifted.done);
  for (const key of Object.keys(parts) as (keyof T)[]) {
    done.set(key, { part: parts[key] as T[keyof T], moves: shifted.moves.length });
  }
  return lazily({ ...shifted, done });
}

interface Shifted<T> {
  readonly value: T;
  readonly file: string;
  readonly moves: readonly Move[];
  /** Parts that were looked at, each with how many of the moves are done on it. */
  readonly done: Map<keyof T, { readonly part: T[keyof T]; readonly moves: number }>;
}

/** What stands behind a value that was carried over. */
const waiting = new WeakMap<object, Shifted<object>>();

function lazily<T extends object>(shifted: Shifted<T>): T {
  const { value, file, moves, done } = shifted;
  const result = {} as T;
  for (const key of Object.keys(value) as (keyof T)[]) {
    Object.defineProperty(result, key, {
      enumerable: true,
      get() {
        const known = done.get(key) ?? { part: value[key], moves: 0 };
        if (known.moves === moves.length) return known.part;
        const left = moves.slice(known.moves);
        // Nothing of a variant is shown at a place of the text.
        const part = key === 'variants' ? known.part : walk(known.part, file, all(left));
        done.set(key, { part: part as T[keyof T], moves: moves.length });
        return part;
      },
    });
  }
  waiting.set(result, shifted as unknown as Shifted<object>);
  return result;
}

const all =
  (moves: readonly Move[]): Move =>
  (offset) =>
    moves.reduce((at, move) => move(at), offset);

function moveBetween(oldText: string, newText: string): Move {
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
  return (offset) => {
    if (offset <= start) return offset;
    if (offset >= oldEnd) return offset + newEnd - oldEnd;
    return Math.min(offset, newEnd);
  };
}

/** What holds no place that moves is handed on as it is; that is most of a result. */
function walk(part: unknown, file: string, move: Move): unknown {
  if (typeof part !== 'object' || part === null) return part;
  if (Array.isArray(part)) {
    if (typeof part[0] !== 'object' || part[0] === null) return part;
    let copy: unknown[] | undefined;
    for (let at = 0; at < part.length; at++) {
      const inner = walk(part[at], file, move);
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
    if (key === 'variants') continue;
    const inner = walk(before[key], file, move);
    if (inner === before[key]) continue;
    copy ??= { ...before };
    copy[key] = inner;
  }
  return copy ?? part;
}

function isPlace(part: object): part is { file: string; from: number; to: number } {
  const place = part as { file?: unknown; from?: unknown; to?: unknown };
  return typeof place.file === 'string' && typeof place.from === 'number' && typeof place.to === 'number';
}
