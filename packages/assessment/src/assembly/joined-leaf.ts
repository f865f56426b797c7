import type { AssemblyLayer } from '@boothwright/language';
import { constructionOf } from './construction.js';
import { isSpace } from './gap-layers.js';

interface Part {
  readonly kind: 'leaf' | 'gap';
  readonly layers: AssemblyLayer[];
}

/**
 * The assembly with one inner leaf put against the leaf outside or inside of it; what stood between them goes to the
 * other side, so that the whole depth stays. Leaves count from 0 at the outside. Undefined when there is no such inner
 * leaf.
 */
export function withJoinedLeaf(
  assembly: readonly AssemblyLayer[],
  leaf: number,
  to: 'outer' | 'inner',
): AssemblyLayer[] | undefined {
  const parts = partsOf(assembly);
  const places = parts.flatMap((part, index) => (part.kind === 'leaf' ? [index] : []));
  const place = places[leaf];
  if (place === undefined || leaf <= 0 || leaf >= places.length - 1) return undefined;
  const neighbour = to === 'outer' ? place - 1 : place + 1;
  const swapped = parts.with(place, parts[neighbour] as Part).with(neighbour, parts[place] as Part);
  return swapped.flatMap((part) => part.layers);
}

/** Leaves and what stands between them, in turn; cloth and layers of no thickness stay with what they follow. */
function partsOf(assembly: readonly AssemblyLayer[]): Part[] {
  const parts: Part[] = [];
  for (const layer of assembly) {
    const sheet = layer.kind === 'material' && constructionOf([layer]).leaves.length > 0;
    const last = parts.at(-1);
    const kind = sheet ? 'leaf' : isSpace(layer) ? 'gap' : (last?.kind ?? 'gap');
    if (last?.kind === kind) last.layers.push(layer);
    else parts.push({ kind, layers: [layer] });
  }
  return parts;
}
