import type { AssemblyLayer } from '@boothwright/language';
import { signature } from './leaf.js';

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

/** The run of pairs in the order of both with the most of them, and of those the one with the most that are the same. */
function commonRun(
  old: readonly AssemblyLayer[],
  now: readonly AssemblyLayer[],
  alike: (a: AssemblyLayer, b: AssemblyLayer) => boolean,
): (readonly [number, number])[] {
  const most = Math.max(old.length, now.length) + 1;
  const worth = old.map((a) => now.map((b) => (alike(a, b) ? most + (isSameLayer(a, b) ? 1 : 0) : 0)));
  const best = Array.from({ length: old.length + 1 }, () => new Array<number>(now.length + 1).fill(0));
  const at = (i: number, j: number) => best[i]?.[j] ?? 0;
  const paired = (i: number, j: number) => {
    const own = worth[i]?.[j] ?? 0;
    return own === 0 ? 0 : own + at(i + 1, j + 1);
  };
  for (let i = old.length - 1; i >= 0; i--)
    for (let j = now.length - 1; j >= 0; j--)
      (best[i] as number[])[j] = Math.max(paired(i, j), at(i + 1, j), at(i, j + 1));
  const pairs: (readonly [number, number])[] = [];
  let [i, j] = [0, 0];
  while (i < old.length && j < now.length) {
    if (paired(i, j) > 0 && paired(i, j) === at(i, j)) pairs.push([i++, j++]);
    else if (at(i + 1, j) >= at(i, j + 1)) i++;
    else j++;
  }
  return pairs;
}

/** Whether nothing but the name of the material differs. */
function isSameLayer(a: AssemblyLayer, b: AssemblyLayer): boolean {
  const thickness = (layer: AssemblyLayer) => (layer.kind === 'frame' ? layer.depth : layer.thickness)?.value;
  return signature(thickness(a)) === signature(thickness(b));
}
