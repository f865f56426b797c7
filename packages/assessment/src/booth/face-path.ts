import {
  type Air,
  compositeTransmissionLoss,
  type EnclosureElement,
  type Layer,
  type PanelSize,
} from '@boothwright/acoustics';
import type { Booth, Face } from '@boothwright/language';
import { constructionOf } from '../assembly/construction.js';
import { transmissionLossOf } from '../assembly/transmission-loss.js';
import { perBand } from '../bands/grid.js';
import type { Memo } from '../memo/memo.js';
import { textRange } from '../text/text-range.js';
import type { BoothPath } from './booth-path.js';
import { netFaceArea } from './face-areas.js';
import { faceSize, insideSize } from './geometry.js';
import { facePatches } from './linings.js';
import { type PartSizes, partSizes } from './part-sizes.js';

/**
 * Sound through one face, its covered and its bare share side by side. A floor that the text leaves out is the floor of
 * the building and no path; any other face that it leaves out is an opening.
 */
export function facePath(
  booth: Booth,
  face: Face,
  air: Air,
  memo: Memo,
  sizes: PartSizes = partSizes(booth),
): BoothPath | undefined {
  const built = booth.faces[face];
  const area = netFaceArea(booth, face);
  if (area <= 0 || (face === 'floor' && built === undefined)) return undefined;
  const size = faceSize(insideSize(booth), face);
  const patches = facePatches(booth, face).map((patch) => ({
    area: area * patch.share,
    layers: constructionOf(patch.layers).layers,
    loss: transmissionLossOf(patch.layers, size, air, memo, sizes(patch.layers)),
  }));
  const transmissionLossDb =
    built === undefined
      ? perBand(() => 0)
      : compositeTransmissionLoss(patches.map((patch) => ({ area: patch.area, transmissionLoss: patch.loss.total })));
  return {
    result: {
      id: `face:${face}`,
      kind: 'face',
      name: face,
      range: textRange(built?.range ?? booth.nameRange),
      areaM2: area,
      transmissionLossDb,
      notes: [],
    },
    halfWidth: perBand((band) => Math.max(...patches.map((patch) => patch.loss.halfWidth[band] as number))),
    elements:
      built === undefined
        ? [{ kind: 'leak', area, depth: 0 }]
        : patches.map((patch) => wallElement(face, patch.layers, patch.area, size)),
    leak: patches.every((patch) => patch.layers.length === 0),
  };
}

/** A floor deck rests on the building's floor at many points, so it does not swing as one panel of its size. */
function wallElement(face: Face, layers: readonly Layer[], area: number, size: PanelSize): EnclosureElement {
  if (layers.length === 0) return { kind: 'leak', area, depth: 0 };
  return face === 'floor' ? { kind: 'wall', layers, area } : { kind: 'wall', layers, area, size };
}
