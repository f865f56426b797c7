import { type Air, type MicrophonePattern, microphonePattern } from '@boothwright/acoustics';
import type { Booth, Door, Equipment, Face, Window } from '@boothwright/language';
import { insideAbsorption } from '../assembly/absorption.js';
import { perBand } from '../bands/grid.js';
import { hardFloorAbsorption } from '../booth/absorption-area.js';
import { netFaceArea, openingArea } from '../booth/face-areas.js';
import { faceArea, faceNames, faceSize, insideSize, type Size } from '../booth/geometry.js';
import { facePatches } from '../booth/linings.js';
import type { Memo } from '../memo/memo.js';
import type { TextRange } from '../result/result-values.js';
import { textRange } from '../text/text-range.js';
import { type Plate, platesOf } from './plates-of.js';
import { speechAbsorption } from './speech-absorption.js';

/** A door or window in a face, in the two coordinates of the booth that the face has. */
export interface FacePart {
  readonly name: string;
  readonly kind: 'door' | 'window';
  readonly range: TextRange;
  readonly along: readonly [number, number];
  readonly across: readonly [number, number];
  /** Of 500 Hz to 2 kHz. */
  readonly absorption: number;
}

export interface RoomFace {
  readonly range: TextRange;
  /** Of 500 Hz to 2 kHz, beside doors and windows. */
  readonly absorption: number;
  readonly parts: readonly FacePart[];
  /** By band, of all that is in the face. */
  readonly meanAbsorption: readonly number[];
}

/** What sound meets in a booth on its way from mouth to microphone. */
export interface Room {
  readonly size: Size;
  readonly pattern: MicrophonePattern;
  readonly faces: Readonly<Record<Face, RoomFace>>;
  readonly plates: readonly Plate[];
}

export function roomOf(booth: Booth, air: Air, memo: Memo): Room {
  const faces = Object.fromEntries(faceNames.map((face) => [face, faceOf(booth, face, air, memo)]));
  return {
    size: insideSize(booth),
    pattern: microphonePattern(booth.microphone?.pattern.value ?? 'omni'),
    faces: faces as Record<Face, RoomFace>,
    plates: booth.equipment.flatMap((thing: Equipment) => platesOf(thing)),
  };
}

function faceOf(booth: Booth, face: Face, air: Air, memo: Memo): RoomFace {
  const size = insideSize(booth);
  const patches = facePatches(booth, face);
  const hardFloor = face === 'floor' && booth.faces.floor === undefined;
  const own = perBand((band) =>
    patches.reduce((sum, { share, layers }) => {
      const hard = hardFloor && layers.length === 0;
      return sum + share * (hard ? hardFloorAbsorption : (insideAbsorption(layers, air, memo)[band] ?? 0));
    }, 0),
  );
  const closed = [
    ...booth.doors.map((door) => ({ opening: door, kind: 'door' as const, layers: door.leaf.layers })),
    ...booth.windows.map((window) => ({ opening: window, kind: 'window' as const, layers: window.pane.layers })),
  ]
    .filter(({ opening }) => opening.face === face)
    .map(({ opening, kind, layers }) => ({ opening, kind, absorption: insideAbsorption(layers, air, memo) }));
  const net = netFaceArea(booth, face);
  const plainHoles = openingArea({ ...booth, doors: [], windows: [] }, face);
  const whole = faceArea(size, face);
  const stated = booth.faces[face]?.range;
  return {
    range: textRange(stated ?? booth.nameRange),
    absorption: speechAbsorption(own),
    parts: closed.map(({ opening, kind, absorption }) => ({
      name: opening.name,
      kind,
      range: textRange(opening.nameRange),
      ...extentOf(opening, kind, face, size),
      absorption: speechAbsorption(absorption),
    })),
    meanAbsorption: own.map((value, band) => {
      const others = closed.reduce(
        (sum, { opening: { size }, absorption }) => sum + size.width.value * size.height.value * absorption[band]!,
        0,
      );
      return Math.min(1, (net * value + others + plainHoles) / whole);
    }),
  };
}

/** Doors stand on the floor, windows at their sill, without one at half height; the offset runs from the left edge as seen from outside. */
function extentOf(opening: Door | Window, kind: 'door' | 'window', face: Face, size: Size) {
  const { width: length, height } = faceSize(size, face);
  const wide = Math.min(opening.size.width.value, length);
  const high = Math.min(opening.size.height.value, height);
  const offset = Math.min(opening.offset?.value ?? (length - wide) / 2, length - wide);
  const mirrored = face === 'back' || face === 'left';
  const from = mirrored ? length - offset - wide : offset;
  const upright = face !== 'roof' && face !== 'floor';
  const stated = kind === 'door' ? 0 : 'sill' in opening ? opening.sill?.value : undefined;
  const base = upright && stated !== undefined ? Math.min(stated, height - high) : (height - high) / 2;
  return { along: [from, from + wide] as const, across: [base, base + high] as const };
}
