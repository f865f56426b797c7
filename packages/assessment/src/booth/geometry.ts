import type { Booth, Face } from '@boothwright/language';
import { assemblyThickness } from '../assembly/thickness.js';
import type { BoothResult } from '../result/result-document.js';

export const faceNames: readonly Face[] = ['front', 'back', 'left', 'right', 'roof', 'floor'];

export type Size = readonly [width: number, depth: number, height: number];

/** Inside sizes as stated; outside as stated, or the inside plus the build-ups around it. */
export function insideSize(booth: Booth): Size {
  return [booth.inside.width.value, booth.inside.depth.value, booth.inside.height.value];
}

export function outsideSize(booth: Booth): Size {
  if (booth.outside !== undefined) {
    return [booth.outside.width.value, booth.outside.depth.value, booth.outside.height.value];
  }
  const [width, depth, height] = insideSize(booth);
  return [
    width + wallThickness(booth, 'left') + wallThickness(booth, 'right'),
    depth + wallThickness(booth, 'front') + wallThickness(booth, 'back'),
    height + wallThickness(booth, 'roof') + wallThickness(booth, 'floor'),
  ];
}

function wallThickness(booth: Booth, face: Face): number {
  return assemblyThickness(booth.faces[face]?.assembly.layers ?? []);
}

/** What is left between the linings. */
export function usableSize(booth: Booth): Size {
  const [width, depth, height] = insideSize(booth);
  return [
    width - liningThickness(booth, 'left') - liningThickness(booth, 'right'),
    depth - liningThickness(booth, 'front') - liningThickness(booth, 'back'),
    height - liningThickness(booth, 'roof') - liningThickness(booth, 'floor'),
  ];
}

/** The thickest lining of a face, m. */
function liningThickness(booth: Booth, face: Face): number {
  const depths = booth.linings
    .filter((lining) => lining.faces.includes(face))
    .map((lining) => assemblyThickness(lining.layers));
  return Math.max(0, ...depths);
}

/** Width and height of a face of a box, m; roof and floor count width and depth. */
export function faceSize([width, depth, height]: Size, face: Face): { width: number; height: number } {
  if (face === 'front' || face === 'back') return { width, height };
  if (face === 'left' || face === 'right') return { width: depth, height };
  return { width, height: depth };
}

export function faceArea(size: Size, face: Face): number {
  const { width, height } = faceSize(size, face);
  return width * height;
}

export function volumeOf([width, depth, height]: Size): number {
  return width * depth * height;
}

/** Faces without a build-up; a missing floor is the floor of the building and counts as closed. */
export function openFaces(booth: Booth): Face[] {
  return faceNames.filter((face) => face !== 'floor' && booth.faces[face] === undefined);
}

export function surfaceOf(size: Size): number {
  return faceNames.reduce((sum, face) => sum + faceArea(size, face), 0);
}

export function geometryOf(booth: Booth): BoothResult['geometry'] {
  const inside = insideSize(booth);
  const outside = outsideSize(booth);
  return {
    insideM: inside,
    outsideM: outside,
    usableM: usableSize(booth),
    volumeM3: volumeOf(inside),
    footprintM2: outside[0] * outside[1],
  };
}
