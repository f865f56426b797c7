import type { Booth } from '@boothwright/language';

/**
 * True for a booth whose floor lies on the floor of the building all over: no mounts, and no air as its outermost layer. The
 * noise of the room then reaches its underside through the building only, so that it is no airborne path. A floor on pads or
 * battens with open edges has the sound of the room beneath it and counts like any other face.
 */
export function liesOnFloor(booth: Booth): boolean {
  const outermost = booth.faces.floor?.assembly.layers.find(
    (layer) => layer.kind === 'frame' || layer.thickness === undefined || layer.thickness.value > 0,
  );
  return outermost !== undefined && outermost.kind !== 'air' && booth.mounts === undefined;
}
