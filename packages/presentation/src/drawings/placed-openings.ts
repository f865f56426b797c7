import type { Booth, Face, SourceRange } from '@boothwright/language';
import { type BoothFrame, faceSize } from './booth-frame.js';

/** A door or window in its face, m from the left lower corner of the outer face as seen from outside. */
export interface PlacedOpening {
  readonly kind: 'door' | 'window';
  readonly name: string;
  /** Its name in the text. */
  readonly range: SourceRange;
  readonly from: number;
  readonly to: number;
  readonly base: number;
  readonly top: number;
  readonly swing: 'outward' | 'inward';
  /** What the text does not say, so that the drawing takes it for granted. */
  readonly assumed: readonly string[];
}

/** A vent or hole, whose place on its face the text never says: m, drawn where its face is free. */
export interface PlacedMark {
  readonly kind: 'vent' | 'hole';
  readonly name: string;
  /** Its name in the text. */
  readonly range: SourceRange;
  readonly along: number;
  readonly up: number;
  readonly width: number;
  readonly height: number;
  readonly round: boolean;
  /** Which way the air goes as far as a fan tells. */
  readonly air: 'in' | 'out' | 'both' | 'none';
}

export function placedOpenings(booth: Booth, face: Face, frame: BoothFrame): PlacedOpening[] {
  const [length, height] = faceSize(frame.outside, face);
  const upright = face !== 'roof' && face !== 'floor';
  const deck = upright ? frame.thickness.floor : 0;
  const along = (opening: { readonly offset: { readonly value: number } | undefined }, width: number) => {
    const from = opening.offset?.value ?? Math.max(0, (length - width) / 2);
    return { from, to: from + width };
  };
  const middle = (name: string) =>
    `The text does not say where ${name} sits in the ${face} (offset): it is drawn in the middle.`;
  const doors = booth.doors
    .filter((door) => door.face === face)
    .map((door): PlacedOpening => {
      const { name, size, swing, offset } = door;
      const base = upright ? deck : Math.max(0, (height - size.height.value) / 2);
      const assumed = [
        ...(offset === undefined ? [middle(name)] : []),
        ...(swing === undefined
          ? [`The text does not say how ${name} opens (swing): it is drawn opening outward.`]
          : []),
        `On which side ${name} hangs is not in the text: its hinges are drawn at the left as seen from outside.`,
      ];
      return {
        kind: 'door',
        name,
        range: door.nameRange,
        ...along(door, size.width.value),
        base,
        top: base + size.height.value,
        swing: swing?.value ?? 'outward',
        assumed,
      };
    });
  const windows = booth.windows
    .filter((window) => window.face === face)
    .map((window): PlacedOpening => {
      const { name, size, sill, offset } = window;
      const half = Math.max(0, (height - size.height.value) / 2);
      const base = upright && sill !== undefined ? deck + sill.value : half;
      const assumed = [
        ...(offset === undefined ? [middle(name)] : []),
        ...(upright && sill === undefined
          ? [`The text does not say how high ${name} sits (sill): it is drawn at half height.`]
          : []),
      ];
      return {
        kind: 'window',
        name,
        range: window.nameRange,
        ...along(window, size.width.value),
        base,
        top: base + size.height.value,
        swing: 'outward',
        assumed,
      };
    });
  return [...doors, ...windows];
}

export function placedMarks(booth: Booth, face: Face, frame: BoothFrame): PlacedMark[] {
  const [, height] = faceSize(frame.outside, face);
  const vents = booth.vents.filter((vent) => vent.face === face);
  const holes = booth.holes.filter((hole) => hole.face === face);
  const taken = placedOpenings(booth, face, frame);
  const places = freePlaces(booth, face, frame, taken, vents.length + holes.length);
  const up = height / 2;
  return [
    ...vents.map((vent, index): PlacedMark => {
      const { duct } = vent;
      const round = duct.kind === 'round';
      const width = round ? duct.diameter.value : duct.width.value;
      const tall = round ? duct.diameter.value : duct.height.value;
      const air = airWay(booth, vent.name);
      return {
        kind: 'vent',
        name: vent.name,
        range: vent.nameRange,
        along: places[index]!,
        up,
        width,
        height: tall,
        round,
        air,
      };
    }),
    ...holes.map((hole, index): PlacedMark => {
      const diameter = hole.diameter.value;
      const along = places[vents.length + index]!;
      return {
        kind: 'hole',
        name: hole.name,
        range: hole.nameRange,
        along,
        up,
        width: diameter,
        height: diameter,
        round: true,
        air: 'none',
      };
    }),
  ];
}

/** A fan says its own way; a vent without one takes the other way where all fans go one way. */
function airWay(booth: Booth, name: string): PlacedMark['air'] {
  const way = (fan: { readonly direction: { readonly value: 'supply' | 'exhaust' } | undefined }) =>
    fan.direction === undefined ? 'both' : fan.direction.value === 'supply' ? 'in' : 'out';
  const own = booth.vents.find((vent) => vent.name === name)?.fan;
  if (own !== undefined) return way(own);
  const others = new Set(booth.vents.flatMap(({ fan }) => (fan === undefined ? [] : [way(fan)])));
  if (others.size !== 1 || others.has('both')) return 'both';
  return others.has('in') ? 'out' : 'in';
}

/** Places evenly over the longest stretch of the face without an opening, between the walls beside it. */
function freePlaces(
  booth: Booth,
  face: Face,
  frame: BoothFrame,
  taken: readonly PlacedOpening[],
  count: number,
): number[] {
  const [length] = faceSize(frame.outside, face);
  const side = booth.faces.front === undefined ? 0 : Math.min(frame.thickness.front, length / 4);
  let [from, to] = [side, length - side];
  let [bestFrom, bestTo] = [from, from];
  for (const opening of [...taken].sort((a, b) => a.from - b.from)) {
    if (opening.from - from > bestTo - bestFrom) [bestFrom, bestTo] = [from, opening.from];
    from = Math.max(from, opening.to);
  }
  if (to - from > bestTo - bestFrom) [bestFrom, bestTo] = [from, to];
  if (bestTo - bestFrom <= 0) [bestFrom, bestTo] = [0, length];
  [from, to] = [bestFrom, bestTo];
  return Array.from({ length: count }, (_, index) => from + ((to - from) * (index + 1)) / (count + 1));
}
