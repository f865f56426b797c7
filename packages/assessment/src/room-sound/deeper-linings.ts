import type { AssemblyLayer, Booth, Face, Lining, SourceRange } from '@boothwright/language';
import { fibreLayer } from '../assembly/fibre-layer.js';
import { usableSize } from '../booth/geometry.js';
import { oncePer } from '../memo/once-per.js';
import { decimals } from '../text/decimals.js';

/** A booth with more fibre at one place. */
export interface DeeperLining {
  /** `100 mm instead of 50 mm of fibre on the back wall` */
  readonly words: string;
  readonly booth: Booth;
}

/** By how much a lining is made deeper, and what a bare face gets, m: usual slabs. Evidence: common practice. */
export const deeperBy = 0.05;
export const bareGets = 0.1;
/** Less than this between the linings, m, is no booth any more. Evidence: common practice. */
const leastBetween = 0.6;

const walls: readonly Face[] = ['left', 'right', 'front', 'back', 'roof'];

/** Every face but the floor, and every door leaf, with a deeper lining or a first one; those that leave room. */
export const deeperLinings = oncePer((booth: Booth): readonly DeeperLining[] =>
  [
    ...walls.flatMap((face) => (booth.faces[face] === undefined ? [] : [onFace(booth, face)])),
    ...booth.doors.map((door) => {
      const { layers, words } = deeper(door.leaf.layers, door.range);
      const doors = booth.doors.map((each) => (each === door ? { ...door, leaf: { ...door.leaf, layers } } : each));
      return { words: `${words} on the door ${door.name}`, booth: { ...booth, doors } };
    }),
  ].filter(({ booth: changed }) => usableSize(changed).every((side) => side >= leastBetween)),
);

function onFace(booth: Booth, face: Face): DeeperLining {
  const place = face === 'roof' ? 'under the roof' : `on the ${face} wall`;
  const own = booth.linings.filter((lining) => lining.faces.includes(face) && lining.layers.length > 0);
  const range = booth.faces[face]?.range ?? booth.nameRange;
  if (own.length === 0) {
    const { layers, words } = deeper([], range);
    const cover = { value: 1, origin: { kind: 'given' as const }, range };
    const added: Lining = { faces: [face], layers, cover, range };
    return { words: `${words} ${place}`, booth: { ...booth, linings: [...booth.linings, added] } };
  }
  const changed = own.map((lining) => deeper(lining.layers, lining.range));
  const linings = [
    ...booth.linings.map((lining) =>
      own.includes(lining) ? { ...lining, faces: lining.faces.filter((each) => each !== face) } : lining,
    ),
    ...own.map((lining, index) => ({ ...lining, faces: [face], layers: changed[index]!.layers })),
  ].filter(({ faces }) => faces.length > 0);
  return { words: `${changed[0]!.words} ${place}`, booth: { ...booth, linings } };
}

/** Layers whose fibre at the face is deeper; without any there, with fibre added on it. */
function deeper(layers: readonly AssemblyLayer[], range: SourceRange) {
  const millimetres = (m: number) => decimals(1000 * m, 0);
  const index = layers.findLastIndex((layer) => layer.kind !== 'material' || layer.material.kind !== 'cloth');
  const fibre = layers[index];
  if (fibre?.kind !== 'material' || fibre.material.kind !== 'porous' || fibre.thickness === undefined) {
    return { layers: [...layers, fibreLayer(bareGets, range)], words: `${millimetres(bareGets)} mm of fibre` };
  }
  const before = fibre.thickness.value;
  const thickness = { ...fibre.thickness, value: before + deeperBy };
  return {
    layers: layers.with(index, { ...fibre, thickness }),
    words: `${millimetres(before + deeperBy)} mm instead of ${millimetres(before)} mm of fibre`,
  };
}

/** The one whose `measure` is smallest, with it; null where none has one or no place is left. */
export function bestDeeperLining(
  booth: Booth,
  measure: (changed: Booth) => number | null,
): (DeeperLining & { readonly value: number }) | null {
  let best: (DeeperLining & { readonly value: number }) | null = null;
  for (const candidate of deeperLinings(booth)) {
    const value = measure(candidate.booth);
    if (value !== null && (best === null || value < best.value)) best = { ...candidate, value };
  }
  return best;
}
