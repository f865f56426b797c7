import type { AssemblyLayer, Booth, Face } from '@boothwright/language';

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
export function facePatches(booth: Booth, face: Face): Patch[] {
  const wall = booth.faces[face]?.assembly.layers ?? [];
  const linings = booth.linings.filter((lining) => lining.faces.includes(face) && lining.cover.value > 0);
  const covered = linings.reduce((sum, lining) => sum + lining.cover.value, 0);
  const scale = covered > 1 ? 1 / covered : 1;
  const patches = linings.map((lining) => ({
    share: lining.cover.value * scale,
    layers: [...wall, ...lining.layers],
  }));
  const bare = 1 - Math.min(covered, 1);
  return bare > 1e-9 ? [...patches, { share: bare, layers: wall }] : patches;
}
