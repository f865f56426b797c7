import type { PanelSize } from '@boothwright/acoustics';
import type { AssemblyLayer, Booth } from '@boothwright/language';
import { constructionOf } from '../assembly/construction.js';
import { oncePer } from '../memo/once-per.js';
import { netFaceArea } from './face-areas.js';
import { faceNames, faceSize, insideSize } from './geometry.js';
import { liesOnFloor } from './lies-on-floor.js';
import { facePatches } from './linings.js';

/** The sizes in which a booth uses a build-up. */
export type PartSizes = (layers: readonly AssemblyLayer[]) => readonly PanelSize[];

/** By build-up, the sizes of all faces, doors and windows that are built like it, each once, narrow ones first. */
export function partSizes(booth: Booth): PartSizes {
  const inside = insideSize(booth);
  const byWall = new Map<string, PanelSize[]>();
  const note = (layers: readonly AssemblyLayer[], size: PanelSize) => {
    const key = wallOf(layers);
    const sizes = byWall.get(key) ?? [];
    byWall.set(key, sizes);
    if (!sizes.some(({ width, height }) => width === size.width && height === size.height)) sizes.push(size);
  };
  for (const face of faceNames) {
    if (booth.faces[face] === undefined || netFaceArea(booth, face) <= 0) continue;
    if (face === 'floor' && liesOnFloor(booth)) continue;
    for (const { layers } of facePatches(booth, face)) note(layers, faceSize(inside, face));
  }
  for (const { leaf, size } of booth.doors) note(leaf.layers, { width: size.width.value, height: size.height.value });
  for (const { pane, size } of booth.windows) note(pane.layers, { width: size.width.value, height: size.height.value });
  // The order of the text must not matter.
  for (const sizes of byWall.values()) sizes.sort((a, b) => a.width - b.width || a.height - b.height);
  return (layers) => byWall.get(wallOf(layers)) ?? [];
}

const wallOf = oncePer((layers: readonly AssemblyLayer[]): string => {
  const { layers: physical, connections, separateFrames } = constructionOf(layers);
  return JSON.stringify([physical, connections, separateFrames]);
});
