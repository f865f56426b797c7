import type { Air, BoxDimensions, BoxPoint, BoxWalls, Complex } from '@boothwright/acoustics';
import type { Booth, Face, Place } from '@boothwright/language';
import { insideAbsorption } from '../assembly/absorption.js';
import { nominalHz, perBand } from '../bands/grid.js';
import { hardFloorAbsorption, personAt } from '../booth/absorption-area.js';
import { insideSize } from '../booth/geometry.js';
import { mouthPlace } from '../booth/mouth-place.js';
import type { Memo } from '../memo/memo.js';
import type { Vector } from '../reflections/vectors.js';
import { type FacePart, faceParts, meanLiningDepth } from './face-parts.js';
import { layersAdmittance, modalBands } from './layers-admittance.js';
import { wallAlternatives, wallCauses } from './wall-alternatives.js';

/** What the modes of a booth depend on: plain figures. */
export interface ModalBox {
  /** m, of the air between the linings at their mean depth */
  readonly size: BoxDimensions;
  /** Where sound is made and taken in; null when the text places no microphone. */
  readonly heard: { readonly mouth: BoxPoint; readonly microphone: BoxPoint } | null;
  /** In the lowest bands, those for which modes may be asked; of these in those that were wanted. */
  readonly admittance: readonly (BoxWalls<Complex> | undefined)[];
  /** m2 by band, of people alone */
  readonly people: readonly number[];
  /** m2 by band, of people and things inside */
  readonly objects: readonly number[];
}

/** What the decay of a booth in every band and its range depend on. */
export interface AcousticBox extends ModalBox {
  /** The real parts if the walls differ from their figures: by band and by cause, see `wall-alternatives`. */
  readonly alternatives: readonly (readonly BoxWalls<number>[] | undefined)[];
  /** Of the six walls in every band that was wanted. */
  readonly absorption: readonly (BoxWalls<number> | undefined)[];
}

const allBands: readonly number[] = nominalHz.map((_, band) => band);

const pointOf = ({ x, y, z }: Pick<Place, 'x' | 'y' | 'z'>): Vector => [x.value, y.value, z.value];

const wallOf: Readonly<Record<keyof BoxWalls<unknown>, Face>> = {
  left: 'left',
  right: 'right',
  front: 'front',
  back: 'back',
  floor: 'floor',
  ceiling: 'roof',
};

/**
 * The booth as a box of air with one admittance per wall: parts of a face count by their area. The walls stand at the mean
 * depth of the linings, so that the box holds as much air as the booth. `wanted` are the bands (indices of the grid) that
 * will be asked for.
 */
export function modalBoxOf(
  booth: Booth,
  people: number,
  air: Air,
  memo: Memo,
  wanted: readonly number[] = allBands,
): ModalBox {
  const depth = (face: Face) => meanLiningDepth(booth, face);
  const [width, deep, height] = insideSize(booth);
  // Linings that meet in the middle leave no air; the check of the text says so.
  const left = (side: number, ...taken: number[]) => Math.max(0.05 * side, side - taken.reduce((sum, m) => sum + m, 0));
  const size: BoxDimensions = [
    left(width, depth('left'), depth('right')),
    left(deep, depth('front'), depth('back')),
    left(height, depth('floor'), depth('roof')),
  ];
  const corner = [depth('left'), depth('front'), depth('floor')];
  const place = (at: Vector): BoxPoint => {
    const [x, y, z] = at.map((value, axis) => Math.min(Math.max(value - corner[axis]!, 0), size[axis]!));
    return [x!, y!, z!];
  };
  const mouth = mouthPlace(booth);
  const mixed = walls((face) =>
    faceParts(booth, face).map(({ share, layers }) => ({ share, values: layersAdmittance(layers, air, memo) })),
  );
  return {
    size,
    heard:
      booth.microphone === undefined || mouth === undefined
        ? null
        : { mouth: place(mouth.at), microphone: place(pointOf(booth.microphone.position)) },
    admittance: inBands(modalBands, wanted, (band) =>
      walls((_face, name) => ({
        re: mixed[name].reduce((sum, { share, values }) => sum + share * values(band).re, 0),
        im: mixed[name].reduce((sum, { share, values }) => sum + share * values(band).im, 0),
      })),
    ),
    people: perBand((band) => people * personAt(nominalHz[band] as number)),
    objects: perBand((band) => objectsAt(booth, people, nominalHz[band] as number)),
  };
}

/** The same with what the field and the range need: one absorption coefficient per wall, and how the walls may differ. */
export function acousticBoxOf(
  booth: Booth,
  people: number,
  air: Air,
  memo: Memo,
  wanted: readonly number[] = allBands,
): AcousticBox {
  const parts = walls((face) => faceParts(booth, face));
  const others = walls((_, name) =>
    parts[name].map(({ share, layers }) => {
      const nominal = layersAdmittance(layers, air, memo);
      return { share, values: wallAlternatives(layers, (band) => nominal(band).re, air, memo) };
    }),
  );
  const alphas = walls((_, name) =>
    parts[name].map(({ share, layers }) => ({ share, values: partAbsorption(layers, air, memo) })),
  );
  return {
    ...modalBoxOf(booth, people, air, memo, wanted),
    alternatives: inBands(modalBands, wanted, (band) =>
      wallCauses.map((_, cause) =>
        walls((_face, name) => others[name].reduce((sum, { share, values }) => sum + share * values[cause]!(band), 0)),
      ),
    ),
    absorption: inBands(nominalHz.length, wanted, (band) =>
      walls((_face, name) =>
        Math.min(
          1,
          alphas[name].reduce((sum, { share, values }) => sum + share * values[band]!, 0),
        ),
      ),
    ),
  };
}

function inBands<T>(count: number, wanted: readonly number[], of: (band: number) => T): (T | undefined)[] {
  return Array.from({ length: count }, (_, band) => (wanted.includes(band) ? of(band) : undefined));
}

function walls<T>(of: (face: Face, name: keyof BoxWalls<unknown>) => T): BoxWalls<T> {
  const each = (name: keyof BoxWalls<unknown>) => of(wallOf[name], name);
  return {
    left: each('left'),
    right: each('right'),
    front: each('front'),
    back: each('back'),
    floor: each('floor'),
    ceiling: each('ceiling'),
  };
}

function partAbsorption(layers: FacePart['layers'], air: Air, memo: Memo): readonly number[] {
  if (layers === 'opening') return perBand(() => 1);
  if (layers === 'building') return perBand(() => hardFloorAbsorption);
  return insideAbsorption(layers, air, memo);
}

/** What a thing absorbs is stated for the bands of speech; in those below this one, Hz, it is counted as nothing. */
export const equipmentFromHz = 400;

function objectsAt(booth: Booth, people: number, nominal: number): number {
  return people * personAt(nominal) + (nominal < equipmentFromHz ? 0 : equipmentArea(booth));
}

/** Faces of what stands inside, each with its share. */
function equipmentArea(booth: Booth): number {
  return booth.equipment.reduce((sum, { size, absorption }) => {
    if (size === undefined) return sum;
    const [w, d, h] = [size.width.value, size.depth.value, size.height.value];
    return sum + 2 * (w * d + w * h + d * h) * absorption.value;
  }, 0);
}
