import type { AssemblyLayer, Booth, Face } from '@boothwright/language';
import { oncePer, oncePerPair } from '../memo/once-per.js';

export interface Patch {
  /** Share of the face, 0..1. */
  readonly share: number;
  /** Layers of the wall and then of the lining, outside first. */
  readonly layers: readonly AssemblyLayer[];
}

/**
 * The patches of a face: one per lining, and the bare rest. Linings of one face stand beside each other; if their
 * shares add to more than the face, they are scaled to fill it.
 */
export function facePatches(booth: Booth, face: Face): readonly Patch[] {
  const known = patchesOf(booth);
  const found = known.get(face) ?? patches(booth, face);
  known.set(face, found);
  return found;
}

const patchesOf = oncePer((_: Booth) => new Map<Face, readonly Patch[]>());

/** One list for the same wall and lining wherever they meet: much is known by the list. */
const lined = oncePerPair((wall: readonly AssemblyLayer[], lining: readonly AssemblyLayer[]) => [...wall, ...lining]);
const nothing: readonly AssemblyLayer[] = [];

function patches(booth: Booth, face: Face): Patch[] {
  const wall = booth.faces[face]?.assembly.layers ?? nothing;
  const linings = booth.linings.filter((lining) => lining.faces.includes(face) && lining.cover.value > 0);
  const covered = linings.reduce((sum, lining) => sum + lining.cover.value, 0);
  const scale = covered > 1 ? 1 / covered : 1;
  const own = linings.map((lining) => ({
    share: lining.cover.value * scale,
    layers: lined(wall, lining.layers),
  }));
  const bare = 1 - Math.min(covered, 1);
  return bare > 1e-9 ? [...own, { share: bare, layers: wall }] : own;
}
