import type { Booth, Face } from '@boothwright/language';
import { faceArea, insideSize, type Size } from './geometry.js';
import { ductArea } from './openings/duct-area.js';

/** Area of a face of the inside box without its openings, m2; never below zero. */
export function netFaceArea(booth: Booth, face: Face, size: Size = insideSize(booth)): number {
  return Math.max(0, faceArea(size, face) - openingArea(booth, face));
}

/** Area of everything that is cut into a face, m2. */
export function openingArea(booth: Booth, face: Face): number {
  const on = <T extends { readonly face: Face }>(openings: readonly T[], area: (opening: T) => number) =>
    openings.filter((opening) => opening.face === face).reduce((sum, opening) => sum + area(opening), 0);
  return (
    on(booth.doors, (door) => door.size.width.value * door.size.height.value) +
    on(booth.windows, (window) => window.size.width.value * window.size.height.value) +
    on(booth.vents, (vent) => ductArea(vent)) +
    on(booth.slits, (slit) => slit.length.value * slit.gap.value) +
    on(booth.holes, (hole) => (Math.PI / 4) * hole.diameter.value ** 2)
  );
}
