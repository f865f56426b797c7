import { type Air, airAbsorptionArea, airAttenuation } from '@boothwright/acoustics';
import type { Booth, Face } from '@boothwright/language';
import { insideAbsorption } from '../assembly/absorption.js';
import { exactHz, nominalHz, perBand } from '../bands/grid.js';
import type { Memo } from '../memo/memo.js';
import { netFaceArea, openingArea } from './face-areas.js';
import { faceNames, insideSize, surfaceOf, volumeOf } from './geometry.js';
import { facePatches } from './linings.js';

/** A floor that the text leaves out is a hard one: 2 % at every band. Evidence: common practice. */
export const hardFloorAbsorption = 0.02;

/**
 * Absorption area of one clothed person, m2, by octave. Evidence: from memory of textbook tables of seated and standing
 * persons; they differ by a third between sources.
 */
export const personAbsorption: readonly { readonly hz: number; readonly area: number }[] = [
  { hz: 63, area: 0.1 },
  { hz: 125, area: 0.15 },
  { hz: 250, area: 0.25 },
  { hz: 500, area: 0.4 },
  { hz: 1000, area: 0.45 },
  { hz: 2000, area: 0.5 },
  { hz: 4000, area: 0.5 },
];

/** Share by which those sources differ. */
export const personSpread = 1 / 3;

export interface AbsorptionArea {
  /** Surfaces, openings and people, m2. */
  readonly surfaces: readonly number[];
  /** The same with the air, 4 m V. */
  readonly total: readonly number[];
  /** Mean absorption of the inside box for Eyring's formula, below 1. */
  readonly mean: readonly number[];
  /** Attenuation of the air, dB/m. */
  readonly airAttenuation: readonly number[];
}

/** Absorption area inside a booth by third-octave band. */
export function absorptionAreaOf(booth: Booth, people: number, air: Air, memo: Memo): AbsorptionArea {
  const size = insideSize(booth);
  const volume = volumeOf(size);
  const parts = [
    ...faceNames.map((face) => faceAbsorption(booth, face, air, memo)),
    ...booth.doors.map((door) => scaled(insideAbsorption(door.leaf.layers, air, memo), sheetArea(door.size))),
    ...booth.windows.map((window) => scaled(insideAbsorption(window.pane.layers, air, memo), sheetArea(window.size))),
  ];
  const open = faceNames.reduce((sum, face) => sum + plainOpeningArea(booth, face), 0);
  const surfaces = perBand(
    (band) =>
      parts.reduce((sum, part) => sum + (part[band] ?? 0), 0) + open + people * personAt(nominalHz[band] as number),
  );
  const attenuation = exactHz.map((hz) => airAttenuation(hz, air));
  return {
    surfaces,
    total: surfaces.map((area, band) => area + airAbsorptionArea(volume, attenuation[band] as number)),
    mean: surfaces.map((area) => Math.min(area / surfaceOf(size), 0.99)),
    airAttenuation: attenuation,
  };
}

function faceAbsorption(booth: Booth, face: Face, air: Air, memo: Memo): number[] {
  const area = netFaceArea(booth, face);
  const missingFloor = face === 'floor' && booth.faces.floor === undefined;
  const patches = facePatches(booth, face).map(({ share, layers }) => ({
    share,
    absorption: missingFloor && layers.length === 0 ? undefined : insideAbsorption(layers, air, memo),
  }));
  return perBand((band) =>
    patches.reduce((sum, { share, absorption }) => {
      const alpha = absorption === undefined ? hardFloorAbsorption : (absorption[band] ?? 0);
      return sum + area * share * alpha;
    }, 0),
  );
}

function sheetArea(size: { readonly width: { readonly value: number }; readonly height: { readonly value: number } }) {
  return size.width.value * size.height.value;
}

function scaled(values: readonly number[], factor: number): number[] {
  return values.map((value) => value * factor);
}

/** Vents, slits and holes, m2: what is cut into the face and closed by no leaf or pane. */
function plainOpeningArea(booth: Booth, face: Face): number {
  return openingArea({ ...booth, doors: [], windows: [] }, face);
}

/** Of one person in the band with this nominal centre, m2: held at the ends of the table, stepped by octave in between. */
export function personAt(nominal: number): number {
  const entry = personAbsorption.findLast(({ hz }) => hz / Math.SQRT2 <= nominal) ?? personAbsorption[0];
  return entry?.area ?? 0;
}
