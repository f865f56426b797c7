import type { Booth, Face } from '@boothwright/language';
import type { BoothFrame } from './booth-frame.js';
import type { Canvas } from './canvas.js';
import { cutSurface } from './hatch.js';
import { type PlacedMark, type PlacedOpening, placedMarks, placedOpenings } from './placed-openings.js';
import type { Box } from './text-box.js';

export const wallFaces = ['front', 'back', 'left', 'right'] as const;
export type Wall = (typeof wallFaces)[number];

type Point = readonly [number, number];

/** From a booth seen from above to the drawing, px: m along a wall from its left edge as seen from outside, and m out of it. */
export interface PlanPlace {
  readonly at: (x: number, y: number) => Point;
  readonly wall: (face: Wall, along: number, out: number) => Point;
}

/** `x0`, `y0`: the outside left front corner of the booth on the drawing, m; y runs upwards. */
export function planPlace(canvas: Canvas, frame: BoothFrame, x0 = 0, y0 = 0): PlanPlace {
  const [width, depth] = frame.outside;
  const at = (x: number, y: number): Point => [canvas.px(x0 + x), -canvas.px(y0 + y)];
  return {
    at,
    wall: (face, along, out) => {
      if (face === 'front') return at(along, -out);
      if (face === 'back') return at(width - along, depth + out);
      return face === 'left' ? at(-out, depth - along) : at(width + out, along);
    },
  };
}

export function wallLength(frame: BoothFrame, face: Wall): number {
  return face === 'front' || face === 'back' ? frame.outside[0] : frame.outside[1];
}

/** Walls with the gaps of their doors and windows, and the lining within. Front and back run over the whole width. */
export function planWalls(canvas: Canvas, booth: Booth, frame: BoothFrame, place: PlanPlace): void {
  for (const face of wallFaces) {
    const long = face === 'front' || face === 'back';
    const length = wallLength(frame, face);
    const thick = frame.thickness[face];
    const [low, high] = beside(face, (side) => (long ? 0 : frame.thickness[side]));
    const box = (from: number, to: number, out: number, deep: number) =>
      boxOf(place.wall(face, from, out), place.wall(face, to, out - deep));
    const gaps = placedOpenings(booth, face, frame);
    if (frame.open[face]) {
      canvas.line([place.wall(face, 0, 0), place.wall(face, length, 0)], { 'stroke-dasharray': '6 4' });
    } else if (thick > 0) {
      for (const [from, to] of without(low, length - high, gaps)) cutSurface(canvas, box(from, to, 0, thick), 'wall');
    }
    const lined = frame.lining[face];
    if (lined > 0) {
      const [from, to] = beside(face, (side) => frame.thickness[side] + (long ? 0 : frame.lining[side]));
      for (const [start, end] of without(from, length - to, gaps))
        cutSurface(canvas, box(start, end, -thick, lined), 'porous');
    }
    for (const gap of gaps)
      if (gap.kind === 'window')
        canvas.mark(gap.range, () => pane(canvas, gap, thick, (a, out) => place.wall(face, a, out)));
  }
}

function pane(canvas: Canvas, gap: PlacedOpening, thick: number, at: (along: number, out: number) => Point): void {
  canvas.rectangle(boxOf(at(gap.from, 0), at(gap.to, -thick)), { 'stroke-width': 0.8 });
  for (const share of [0.4, 0.6]) canvas.line([at(gap.from, -thick * share), at(gap.to, -thick * share)]);
}

/** The leaf of a door standing open and the way its free edge takes; `degrees` where something stops it. */
export function planDoor(
  canvas: Canvas,
  opening: PlacedOpening,
  thick: number,
  at: (along: number, out: number) => Point,
  degrees = 90,
): void {
  const width = opening.to - opening.from;
  const out = opening.swing === 'outward' ? 1 : -1;
  const foot = out > 0 ? 0 : -thick;
  const edge = (angle: number) =>
    at(
      opening.from + width * Math.cos((angle * Math.PI) / 180),
      foot + out * width * Math.sin((angle * Math.PI) / 180),
    );
  const { accent } = canvas.inks;
  const steps = 18;
  const way = Array.from({ length: steps + 1 }, (_, index) => edge((degrees * index) / steps));
  canvas.line(way, { stroke: accent, 'stroke-dasharray': '4 3' });
  canvas.line([at(opening.from, foot), edge(degrees)], { stroke: accent, 'stroke-width': 2.5 });
}

/** The way of the air through the wall: an arrow, or two heads where nothing says which way. */
export function planVent(canvas: Canvas, mark: PlacedMark, thick: number, at: (along: number, out: number) => Point) {
  const { accent, paper } = canvas.inks;
  const half = mark.width / 2;
  canvas.rectangle(boxOf(at(mark.along - half, 0), at(mark.along + half, -thick)), {
    fill: paper,
    'stroke-dasharray': '3 2',
  });
  if (mark.kind === 'hole') return;
  const reach = thick + 0.12;
  const outer = at(mark.along, 0.12);
  const inner = at(mark.along, -reach);
  canvas.line([outer, inner], { stroke: accent, 'stroke-width': 1.6 });
  if (mark.air !== 'out') head(canvas, outer, inner);
  if (mark.air !== 'in') head(canvas, inner, outer);
}

function head(canvas: Canvas, from: Point, to: Point): void {
  const angle = Math.atan2(to[1] - from[1], to[0] - from[0]);
  const wing = (turn: number): Point => [to[0] - 7 * Math.cos(angle + turn), to[1] - 7 * Math.sin(angle + turn)];
  canvas.line([wing(0.45), to, wing(-0.45)], { stroke: canvas.inks.accent, 'stroke-width': 1.6 });
}

export function planOpenings(
  canvas: Canvas,
  booth: Booth,
  frame: BoothFrame,
  place: PlanPlace,
  opensDeg: ReadonlyMap<string, number> = new Map(),
): void {
  for (const face of wallFaces) {
    const at = (along: number, out: number) => place.wall(face, along, out);
    const thick = frame.thickness[face];
    for (const opening of placedOpenings(booth, face, frame)) {
      if (opening.kind !== 'door') continue;
      canvas.mark(opening.range, () => planDoor(canvas, opening, thick, at, opensDeg.get(opening.name)));
    }
    for (const mark of placedMarks(booth, face, frame))
      canvas.mark(mark.range, () => planVent(canvas, mark, thick + frame.lining[face], at));
  }
}

/** What stands at the left and at the right edge of a wall as seen from outside. */
function beside(face: Wall, of: (side: Wall) => number): readonly [number, number] {
  const sides = {
    front: ['left', 'right'],
    back: ['right', 'left'],
    left: ['back', 'front'],
    right: ['front', 'back'],
  } as const;
  const [left, right] = sides[face];
  return [of(left), of(right)];
}

/** The stretches from `low` to `high` that no opening takes. */
function without(low: number, high: number, gaps: readonly PlacedOpening[]): [number, number][] {
  const left: [number, number][] = [];
  let from = low;
  for (const gap of [...gaps].sort((a, b) => a.from - b.from)) {
    if (gap.from > from) left.push([from, Math.min(gap.from, high)]);
    from = Math.max(from, gap.to);
  }
  if (high > from) left.push([from, high]);
  return left.filter(([start, end]) => end - start > 1e-6);
}

export function boxOf(one: Point, other: Point): Box {
  return {
    left: Math.min(one[0], other[0]),
    right: Math.max(one[0], other[0]),
    top: Math.min(one[1], other[1]),
    bottom: Math.max(one[1], other[1]),
  };
}

export function isWall(face: Face): face is Wall {
  return face !== 'roof' && face !== 'floor';
}
