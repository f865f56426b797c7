import type { BoothResult, PanelResult } from '@boothwright/assessment';
import type { Booth, Face } from '@boothwright/language';
import { svgElement } from '../charts/svg-element.js';
import { lengthText } from '../numbers/length-text.js';
import { type BoothFrame, boothFrame, faceSize, isDrawable } from './booth-frame.js';
import { doorWords, ventWords } from './booth-words.js';
import { type Callout, callouts } from './callouts.js';
import type { Canvas } from './canvas.js';
import { acrossPoints, dimensionSides, upPoints } from './dimension-sides.js';
import type { Drawing, DrawingOptions, NotDrawn } from './drawing.js';
import { finishDrawing } from './finish-drawing.js';
import { type PlacedMark, type PlacedOpening, placedMarks, placedOpenings } from './placed-openings.js';
import { isWall } from './plan-parts.js';

/** One face as it is seen from outside (roof and floor from above, the front below), with what is cut into it. */
export function drawElevation(
  booth: Booth,
  face: Face,
  result: BoothResult | undefined,
  options: DrawingOptions,
): Drawing | NotDrawn {
  const id = `elevation-${face}`;
  const seen = isWall(face) ? 'as seen from outside' : 'as seen from above, the front below';
  const title = `${names[face]} of ${booth.name}, ${seen}`;
  const frame = boothFrame(booth, result);
  if (!isDrawable(frame)) return { kind: 'elevation', id, title, why: `the sizes of ${booth.name} are not known` };
  if (frame.open[face]) return { kind: 'elevation', id, title, why: `${booth.name} has no ${face}` };
  const { units } = options;
  const [length, height] = faceSize(frame.outside, face);
  const openings = placedOpenings(booth, face, frame);
  const marks = placedMarks(booth, face, frame);
  const size = `${lengthText(length, units)} × ${lengthText(height, units)}`;
  const rows = [
    ['face', size, booth.faces[face]?.assembly.name ?? ''],
    ...openings.map((opening) => {
      const words = doorWords(booth, opening.name, units);
      const left = `${lengthText(opening.from, units)} from the left edge`;
      const up = isWall(face)
        ? `, ${lengthText(opening.base, units)} above the floor of the room${opening.kind === 'window' ? `, sill ${lengthText(opening.base - frame.thickness.floor, units)} above the floor inside` : ''}`
        : '';
      return [words.what, words.size, `${left}${up}`];
    }),
    ...booth.vents
      .filter((vent) => vent.face === face)
      .map((vent) => {
        const { what, size: own } = ventWords(vent, units);
        return [what, own, 'place not said'];
      }),
    ...booth.holes
      .filter((hole) => hole.face === face)
      .map((hole) => [`hole ${hole.name}`, lengthText(hole.diameter.value, units), 'place not said']),
  ];
  return finishDrawing(
    {
      kind: 'elevation',
      id,
      title,
      description: `${size}. ${rows
        .slice(1)
        .map((row) => row.join(', '))
        .join('. ')}`,
      notes: [
        ...new Set(openings.flatMap(({ assumed }) => assumed)),
        ...(marks.length > 0
          ? ['Where a vent or hole sits on its face is not in the text: it is drawn where the face is free.']
          : []),
      ],
      table: { caption: title, columns: ['what', 'size', 'where'], rows },
      extent: { width: length, height },
      paper: { widthMm: 180, heightMm: 140 },
      draw: (canvas) => draw(canvas, { face, frame, openings, marks, panels: result?.build.panels ?? [] }, options),
    },
    options,
  );
}

const names: Readonly<Record<Face, string>> = {
  front: 'Front',
  back: 'Back',
  left: 'Left side',
  right: 'Right side',
  roof: 'Roof',
  floor: 'Floor',
};

interface Seen {
  readonly face: Face;
  readonly frame: BoothFrame;
  readonly openings: readonly PlacedOpening[];
  readonly marks: readonly PlacedMark[];
  readonly panels: readonly PanelResult[];
}

function draw(canvas: Canvas, { face, frame, openings, marks, panels }: Seen, { units }: DrawingOptions): void {
  const [length, height] = faceSize(frame.outside, face);
  const { accent } = canvas.inks;
  const box = (from: number, to: number, base: number, top: number) => ({
    left: canvas.px(from),
    right: canvas.px(to),
    top: -canvas.px(top),
    bottom: -canvas.px(base),
  });
  canvas.rectangle(box(0, length, 0, height), { 'stroke-width': 1.6 });
  joints(canvas, face, panels);
  const named: Callout[] = [];
  for (const opening of openings) {
    const own = box(opening.from, opening.to, opening.base, opening.top);
    canvas.rectangle(own, { stroke: accent, 'stroke-width': 1.4 });
    const middle = (own.top + own.bottom) / 2;
    if (opening.kind === 'door') {
      // The lines of the swing meet at the side of the hinges.
      const way: [number, number][] = [
        [own.right, own.top],
        [own.left, middle],
        [own.right, own.bottom],
      ];
      canvas.line(way, { stroke: accent, 'stroke-width': 0.8, 'stroke-dasharray': '5 3' });
    } else {
      canvas.rectangle(
        { left: own.left + 3, right: own.right - 3, top: own.top + 3, bottom: own.bottom - 3 },
        { stroke: accent, 'stroke-width': 0.6 },
      );
    }
    const size = `${lengthText(opening.to - opening.from, units)} × ${lengthText(opening.top - opening.base, units)}`;
    const x = opening.kind === 'door' ? own.right - 10 : (own.left + own.right) / 2;
    named.push({ text: `${opening.kind} ${opening.name}, ${size}`, x, y: middle, range: opening.range });
  }
  for (const mark of marks) {
    const half = { x: canvas.px(mark.width / 2), y: canvas.px(mark.height / 2) };
    const [x, y] = [canvas.px(mark.along), -canvas.px(mark.up)];
    const own = { left: x - half.x, right: x + half.x, top: y - half.y, bottom: y + half.y };
    const look = { stroke: accent, 'stroke-width': 1.4, 'stroke-dasharray': '3 2' };
    if (mark.round) canvas.shape(svgElement('circle', { cx: x, cy: y, r: half.x, fill: 'none', ...look }), own);
    else canvas.rectangle(own, look);
    named.push({ text: `${mark.kind} ${mark.name}, place not said`, x, y, range: mark.range });
  }
  if (isWall(face)) {
    canvas.line(
      [
        [-8, 0],
        [canvas.px(length) + 8, 0],
      ],
      { 'stroke-width': 2.2 },
    );
  }
  dimensions(canvas, openings, length, height, isWall(face) ? frame.thickness.floor : 0, units);
  if (named.length > 0) callouts(canvas, named, canvas.bounds().right + 4);
}

/** Where one panel of the outer shell meets the next. */
function joints(canvas: Canvas, face: Face, panels: readonly PanelResult[]): void {
  if (!isWall(face)) return;
  for (const panel of panels.filter((one) => one.face === face && one.leaf !== 'inner')) {
    const own = {
      left: canvas.px(panel.offsetM),
      right: canvas.px(panel.offsetM + panel.widthM),
      top: -canvas.px(panel.baseM + panel.heightM),
      bottom: -canvas.px(panel.baseM),
    };
    canvas.rectangle(own, { 'stroke-width': 0.6, 'stroke-opacity': '0.6', 'stroke-dasharray': '8 2 2 2' });
  }
}

function dimensions(
  canvas: Canvas,
  openings: readonly PlacedOpening[],
  length: number,
  height: number,
  deck: number,
  units: DrawingOptions['units'],
): void {
  const cut = openings.length > 0;
  const edges = [0, ...openings.flatMap(({ from, to }) => [from, to]), length];
  const levels = [0, deck, ...openings.flatMap(({ base, top }) => [base, top]), height];
  dimensionSides(
    canvas,
    {
      left: [cut ? upPoints(canvas, levels) : undefined, upPoints(canvas, [0, height])],
      below: [cut ? acrossPoints(canvas, edges) : undefined, acrossPoints(canvas, [0, length])],
    },
    { left: 0, right: canvas.px(length), top: -canvas.px(height), bottom: 0 },
    units,
  );
}
