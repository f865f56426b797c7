import type { Booth, Door, Face, Window } from '@boothwright/language';
import type { PanelOpening } from '../result/build-result.js';
import { deckCarriesWalls, deckHeight, type FaceExtent } from './face-extents.js';

/** Strips narrower than this go to the panel beside them, m. Evidence: common practice, a strip needs two studs. */
export const leastPanelWidth = 0.15;

/** Width of the post beside a door in a wall without a frame, m. Evidence: common practice. */
export const doorPostWidth = 0.045;

/** A panel of a face: from its left and lower edge. */
export interface FacePanel {
  readonly offset: number;
  readonly width: number;
  readonly base: number;
  readonly height: number;
  readonly openings: readonly PanelOpening[];
  readonly level: 'whole' | 'lower' | 'upper';
}

export interface DividedFace {
  readonly panels: readonly FacePanel[];
  readonly notes: readonly string[];
}

interface Placed extends PanelOpening {
  /** Whether its panel has to be made for it: a door, or a window that a joint would cut. */
  readonly own: boolean;
}

/**
 * Cuts one face into panels of equal width, none wider than `width`. A door gets a panel of its own, with a post at
 * either side, even where that makes it wider; so does a window that a joint would cut. A strip that would be narrower
 * than `leastPanelWidth` goes to the panel beside it. A horizontal joint at `split` leaves panels with an opening across
 * it whole.
 */
export function divideFace(extent: FaceExtent, booth: Booth, width: number, split: number | undefined): DividedFace {
  const notes: string[] = [];
  const openings = placedOpenings(extent, booth, split, notes);
  const post = postWidth(extent);
  let columns = columnsOf(
    extent.lengthM,
    openings.filter((o) => o.own),
    width,
    post,
  );
  const cut = openings.filter((o) => !o.own && !columns.some((column) => holds(column, o, post)));
  if (cut.length > 0) {
    const own = openings.map((o) => (cut.includes(o) ? { ...o, own: true } : o));
    columns = columnsOf(
      extent.lengthM,
      own.filter((o) => o.own),
      width,
      post,
    );
  }
  const panels = columns.flatMap((column): FacePanel[] => {
    const inside = openings
      .filter(
        (o) => o.offsetM + o.widthM / 2 >= column.offset && o.offsetM + o.widthM / 2 < column.offset + column.width,
      )
      .map(({ own: _, ...opening }): PanelOpening => within(opening, column));
    const whole: FacePanel = { ...column, base: 0, height: extent.heightM, openings: inside, level: 'whole' };
    if (split === undefined || split <= 0 || split >= extent.heightM || isFlat(extent.face)) return [whole];
    if (inside.some((o) => o.baseM < split && o.baseM + o.heightM > split)) {
      notes.push(`The panel with ${inside.map((o) => o.name).join(', ')} stays in one piece: the joint would cut it.`);
      return [whole];
    }
    const lower = inside.filter((o) => o.baseM + o.heightM <= split);
    const upper = inside.filter((o) => o.baseM >= split).map((o) => ({ ...o, baseM: o.baseM - split }));
    return [
      { ...column, base: 0, height: split, openings: lower, level: 'lower' },
      { ...column, base: split, height: extent.heightM - split, openings: upper, level: 'upper' },
    ];
  });
  return { panels, notes };
}

interface Column {
  readonly offset: number;
  readonly width: number;
}

function columnsOf(length: number, own: readonly Placed[], width: number, post: number): Column[] {
  const reserved: { from: number; to: number }[] = [];
  for (const opening of [...own].sort((a, b) => a.offsetM - b.offsetM)) {
    let from = Math.max(0, opening.offsetM - post);
    let to = Math.min(length, opening.offsetM + opening.widthM + post);
    const last = reserved[reserved.length - 1];
    if (from - (last?.to ?? 0) < leastPanelWidth) from = last?.to ?? 0;
    if (length - to < leastPanelWidth) to = length;
    if (last !== undefined && opening.offsetM - post < last.to) last.to = Math.max(last.to, to);
    else reserved.push({ from, to });
  }
  const columns: Column[] = [];
  const fill = (from: number, to: number) => {
    if (to - from <= 1e-9) return;
    const count = Math.max(1, Math.ceil((to - from) / width - 1e-9));
    for (let index = 0; index < count; index += 1) {
      columns.push({ offset: from + ((to - from) * index) / count, width: (to - from) / count });
    }
  };
  let reached = 0;
  for (const { from, to } of reserved) {
    fill(reached, from);
    columns.push({ offset: from, width: to - from });
    reached = to;
  }
  fill(reached, length);
  return columns;
}

function holds(column: Column, opening: PanelOpening, post: number): boolean {
  return (
    opening.offsetM - post >= column.offset - 1e-9 &&
    opening.offsetM + opening.widthM + post <= column.offset + column.width + 1e-9
  );
}

/** The opening from the edge of its panel; what would reach beyond the panel ends at its edge. */
function within(opening: PanelOpening, column: Column): PanelOpening {
  const from = Math.max(0, opening.offsetM - column.offset);
  const to = Math.min(column.width, opening.offsetM + opening.widthM - column.offset);
  return { ...opening, offsetM: from, widthM: Math.max(0, to - from) };
}

function postWidth({ skin }: FaceExtent): number {
  const frame = skin.layers.find((layer) => layer.kind === 'frame');
  return frame?.kind === 'frame' ? frame.width.value : doorPostWidth;
}

function isFlat(face: Face): boolean {
  return face === 'roof' || face === 'floor';
}

/**
 * Doors stand on the level of the deck, windows at their sill above it, or, where the text gives none, at half height (of
 * the upper panel where a joint leaves room).
 */
function placedOpenings(extent: FaceExtent, booth: Booth, split: number | undefined, notes: string[]): Placed[] {
  const on = <T extends { readonly face: Face }>(all: readonly T[]) => all.filter(({ face }) => face === extent.face);
  const deck = deckCarriesWalls(booth) ? 0 : deckHeight(booth);
  const along = (opening: Door | Window) => {
    const width = Math.min(opening.size.width.value, extent.lengthM);
    const wanted = (opening.offset?.value ?? (extent.faceLengthM - opening.size.width.value) / 2) - extent.startM;
    const offset = Math.min(Math.max(0, wanted), extent.lengthM - width);
    if (width < opening.size.width.value - 1e-9 || Math.abs(offset - Math.max(0, wanted)) > 1e-9)
      notes.push(`${opening.name} does not fit into the ${extent.face} where the text puts it; it is moved inwards.`);
    if (opening.offset === undefined)
      notes.push(`The text does not say where ${opening.name} sits in the ${extent.face}: it is taken in the middle.`);
    return { name: opening.name, offsetM: offset, widthM: width };
  };
  const doors = on(booth.doors).map((door): Placed => {
    const heightM = Math.min(door.size.height.value, extent.heightM);
    if (heightM < door.size.height.value)
      notes.push(
        `${door.name} is higher than the panel around it, which is ${Math.round(extent.heightM * 1000)} mm high.`,
      );
    const baseM = isFlat(extent.face) ? 0 : Math.max(0, Math.min(deck, extent.heightM - heightM));
    return { kind: 'door', ...along(door), baseM, heightM, own: true };
  });
  const windows = on(booth.windows).map((window): Placed => {
    const heightM = Math.min(window.size.height.value, extent.heightM);
    const room = split === undefined || isFlat(extent.face) ? 0 : extent.heightM - split;
    const half =
      split !== undefined && room >= heightM + 0.1 ? split + (room - heightM) / 2 : (extent.heightM - heightM) / 2;
    const stated = isFlat(extent.face) ? undefined : window.sill?.value;
    if (stated === undefined && !isFlat(extent.face))
      notes.push(`The text does not say how high ${window.name} sits (\`sill\`): it is taken at half height.`);
    const baseM = stated === undefined ? half : Math.max(0, Math.min(deck + stated, extent.heightM - heightM));
    return { kind: 'window', ...along(window), baseM, heightM, own: false };
  });
  return [...doors, ...windows];
}
