/** A bounded store of results by the text of their inputs; the least recently used entry goes first. */
export interface Memo {
  /** The stored result for `key`, or that of `compute`, which must depend on nothing but the key. */
  of<T>(key: string, compute: () => T): T;
  readonly size: number;
  /** Makes room for so many entries, within bounds; with less than one text needs, each look would throw out the next. */
  reserve(entries: number): void;
  /** How often `of` had to compute since the memo was made; lets a test see that an edit recomputes only its own. */
  readonly computed: number;
  /** The same by kind of result: the first word of the key. */
  readonly computedByKind: Readonly<Record<string, number>>;
}

/** As many times the usual capacity at most, however long a text is: some ten megabytes. */
const mostTimes = 5;

/**
 * `capacity` bounds the number of entries. A booth with a handful of assemblies and variants needs some hundreds;
 * an entry is a few kilobytes.
 */
export const memoCapacity = 2000;

export function createMemo(capacity: number = memoCapacity): Memo {
  const entries = new Map<string, unknown>();
  let computed = 0;
  let bound = capacity;
  const byKind: Record<string, number> = {};
  return {
    of<T>(key: string, compute: () => T): T {
      if (entries.has(key)) {
        const found = entries.get(key) as T;
        entries.delete(key);
        entries.set(key, found);
        return found;
      }
      const value = compute();
      computed += 1;
      const kind = key.slice(0, key.indexOf(' '));
      byKind[kind] = (byKind[kind] ?? 0) + 1;
      entries.set(key, value);
      while (entries.size > bound) entries.delete(entries.keys().next().value as string);
      return value;
    },
    reserve(count) {
      bound = Math.min(Math.max(count, capacity), mostTimes * capacity);
    },
    get size() {
      return entries.size;
    },
    get computed() {
      return computed;
    },
    get computedByKind() {
      return { ...byKind };
    },
  };
}
