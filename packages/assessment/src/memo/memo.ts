/** A bounded store of results by the text of their inputs; the least recently used entry goes first. */
export interface Memo {
  /** The stored result for `key`, or that of `compute`, which must depend on nothing but the key. */
  of<T>(key: string, compute: () => T): T;
  readonly size: number;
  /** How often `of` had to compute since the memo was made; lets a test see that an edit recomputes only its own. */
  readonly computed: number;
  /** The same by kind of result: the first word of the key. */
  readonly computedByKind: Readonly<Record<string, number>>;
}

/**
 * `capacity` bounds the number of entries. A booth with a handful of assemblies and variants needs some hundreds;
 * an entry is a few kilobytes.
 */
export const memoCapacity = 2000;

export function createMemo(capacity: number = memoCapacity): Memo {
  const entries = new Map<string, unknown>();
  let computed = 0;
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
      if (entries.size > capacity) {
        const oldest = entries.keys().next().value;
        if (oldest !== undefined) entries.delete(oldest);
      }
      return value;
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
