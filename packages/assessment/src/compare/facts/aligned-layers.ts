import type { AssemblyLayer } from '@boothwright/language';

/** A layer of each side that belong together; its number counts from outside, in the new text where it is there. */
export interface LayerPair {
  readonly old: AssemblyLayer | undefined;
  readonly now: AssemblyLayer | undefined;
  readonly number: number;
}

/**
 * Layers in their order, so that one more in the middle is one more and does not shift the rest. What lies between two kept
 * layers is taken as replaced in its order.
 */
export function alignedLayers(
  old: readonly AssemblyLayer[],
  now: readonly AssemblyLayer[],
  sameMaterial: (a: object, b: object) => boolean,
): LayerPair[] {
  const alike = (a: AssemblyLayer, b: AssemblyLayer) =>
    a.kind === b.kind && (a.kind !== 'material' || b.kind !== 'material' || sameMaterial(a.material, b.material));
  const kept = commonRun(old, now, alike);
  const pairs: LayerPair[] = [];
  let [i, j] = [0, 0];
  for (const [a, b] of [...kept, [old.length, now.length] as const]) {
    for (; i < a || j < b; ) {
      const [before, after] = [i < a ? old[i++] : undefined, j < b ? now[j++] : undefined];
      pairs.push({ old: before, now: after, number: after === undefined ? i : j });
    }
    if (a < old.length) pairs.push({ old: old[i++], now: now[j++], number: j });
  }
  return pairs;
}

/** Longest run of pairs in the order of both. */
function commonRun<T>(
  old: readonly T[],
  now: readonly T[],
  alike: (a: T, b: T) => boolean,
): (readonly [number, number])[] {
  const longest = Array.from({ length: old.length + 1 }, () => new Array<number>(now.length + 1).fill(0));
  const at = (i: number, j: number) => longest[i]?.[j] ?? 0;
  for (let i = old.length - 1; i >= 0; i--)
    for (let j = now.length - 1; j >= 0; j--)
      (longest[i] as number[])[j] = alike(old[i] as T, now[j] as T)
        ? at(i + 1, j + 1) + 1
        : Math.max(at(i + 1, j), at(i, j + 1));
  const pairs: (readonly [number, number])[] = [];
  let [i, j] = [0, 0];
  while (i < old.length && j < now.length) {
    if (alike(old[i] as T, now[j] as T)) pairs.push([i++, j++]);
    else if (at(i + 1, j) >= at(i, j + 1)) i++;
    else j++;
  }
  return pairs;
}
