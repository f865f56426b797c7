import type { Booth, Face } from '@boothwright/language';
import { assemblyMass } from '../assembly/surface-mass.js';
import { netFaceArea } from '../booth/face-areas.js';
import { faceNames, insideSize, outsideSize, type Size } from '../booth/geometry.js';

export interface MassPart {
  readonly part: string;
  readonly kg: number;
}

/**
 * Mass of the booth by part, kg. A face weighs its mass per area times its area halfway between the inside and the
 * outside box, less its openings: corners then count about once. Linings weigh on their covered share of the inside
 * face. Ducts, fans, door hardware and fixings are not counted.
 */
export function massByPart(booth: Booth): MassPart[] {
  const inside = insideSize(booth);
  const outside = outsideSize(booth);
  const middle = inside.map((length, axis) => (length + (outside[axis] as number)) / 2) as unknown as Size;
  const parts = [
    ...faceNames.map((face) => ({
      part: face,
      kg: netFaceArea(booth, face, middle) * assemblyMass(booth.faces[face]?.assembly.layers ?? []),
    })),
    ...booth.doors.map((door) => ({
      part: `door ${door.name}`,
      kg: door.size.width.value * door.size.height.value * assemblyMass(door.leaf.layers),
    })),
    ...booth.windows.map((window) => ({
      part: `window ${window.name}`,
      kg: window.size.width.value * window.size.height.value * assemblyMass(window.pane.layers),
    })),
    { part: 'linings', kg: faceNames.reduce((sum, face) => sum + liningMass(booth, face), 0) },
  ];
  return parts.filter((part) => part.kg > 0);
}

function liningMass(booth: Booth, face: Face): number {
  const linings = booth.linings.filter((lining) => lining.faces.includes(face));
  const covered = linings.reduce((sum, lining) => sum + lining.cover.value, 0);
  const scale = covered > 1 ? 1 / covered : 1;
  return linings.reduce(
    (sum, lining) => sum + netFaceArea(booth, face) * lining.cover.value * scale * assemblyMass(lining.layers),
    0,
  );
}
