/**
 * A function of an immutable thing of the spec that is worked out once for each such thing, and forgotten with it. For what
 * is asked many times in one assessment; what must outlast an edit belongs into the memo.
 */
export function oncePer<K extends object, V>(compute: (thing: K) => V): (thing: K) => V {
  const known = new WeakMap<K, { readonly value: V }>();
  return (thing) => {
    const found = known.get(thing);
    if (found !== undefined) return found.value;
    const value = compute(thing);
    known.set(thing, { value });
    return value;
  };
}

/** The same of two things. */
export function oncePerPair<A extends object, B extends object, V>(
  compute: (one: A, other: B) => V,
): (one: A, other: B) => V {
  const of = oncePer((one: A) => oncePer((other: B) => compute(one, other)));
  return (one, other) => of(one)(other);
}

/** The text of a thing in the key of the memo. */
export const keyText: (thing: object) => string = oncePer((thing) => JSON.stringify(thing));
