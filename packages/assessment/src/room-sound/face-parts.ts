import type { AssemblyLayer, Booth, Face } from '@boothwright/language';
import { assemblyThickness } from '../assembly/thickness.js';
import { netFaceArea, openingArea } from '../booth/face-areas.js';
import { faceArea, insideSize } from '../booth/geometry.js';
import { facePatches } from '../booth/linings.js';
import { oncePer } from '../memo/once-per.js';

/** A part of a face as sound meets it from inside. */
export interface FacePart {
  /** Share of the whole face, 0..1. */
  readonly share: number;
  /** Outside first; `building` is the hard floor of the building, `opening` what nothing closes. */
  readonly layers: readonly AssemblyLayer[] | 'building' | 'opening';
}

/** Lined and bare wall, leaves, panes and openings of one face; the shares add to one. */
export function faceParts(booth: Booth, face: Face): readonly FacePart[] {
  const known = partsByFace(booth);
  const parts = known.get(face) ?? partsOf(booth, face);
  known.set(face, parts);
  return parts;
}

const partsByFace = oncePer((_booth: Booth) => new Map<Face, readonly FacePart[]>());

function partsOf(booth: Booth, face: Face): FacePart[] {
  const whole = faceArea(insideSize(booth), face);
  const net = netFaceArea(booth, face) / whole;
  const missingFloor = face === 'floor' && booth.faces.floor === undefined;
  const leaves = [
    ...booth.doors.filter((door) => door.face === face).map(({ size, leaf }) => ({ size, layers: leaf.layers })),
    ...booth.windows.filter((pane) => pane.face === face).map(({ size, pane }) => ({ size, layers: pane.layers })),
  ].map(({ size, layers }) => ({ share: (size.width.value * size.height.value) / whole, layers }));
  const open = openingArea({ ...booth, doors: [], windows: [] }, face) / whole;
  const parts: FacePart[] = [
    ...facePatches(booth, face).map((patch) => ({
      share: net * patch.share,
      layers: missingFloor && patch.layers.length === 0 ? ('building' as const) : patch.layers,
    })),
    ...leaves,
    { share: open, layers: 'opening' },
  ];
  // A door larger than its face is reported elsewhere; here it fills the face.
  const sum = parts.reduce((total, { share }) => total + share, 0);
  return parts.filter(({ share }) => share > 0).map((part) => ({ ...part, share: part.share / sum }));
}

/** How far the linings of a face stand into the booth on the average over the face, m. */
export function meanLiningDepth(booth: Booth, face: Face): number {
  const linings = booth.linings.filter((lining) => lining.faces.includes(face));
  const covered = linings.reduce((sum, { cover }) => sum + cover.value, 0);
  const net = netFaceArea(booth, face) / faceArea(insideSize(booth), face);
  return linings.reduce(
    (sum, { cover, layers }) => sum + (net * cover.value * assemblyThickness(layers)) / Math.max(1, covered),
    0,
  );
}
