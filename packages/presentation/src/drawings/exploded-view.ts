import type { BoothResult, BoxInBooth, PanelResult } from '@boothwright/assessment';
import { round, svgElement } from '../charts/svg-element.js';
import { farToNear } from './box-order.js';
import type { Canvas } from './canvas.js';
import type { Drawing, DrawingOptions, NotDrawn } from './drawing.js';
import { finishDrawing } from './finish-drawing.js';
import { panelMass, panelRows, panelSteps } from './panel-words.js';
import { projection, type Vector, type View } from './project.js';
import { type Box, lineHeight, overlaps, textWidth } from './text-box.js';
import { outline, type Point, visibleSpot } from './visible-spot.js';

export interface ExplodedOptions extends DrawingOptions, Partial<View> {
  /** How far the faces stand apart, as a share of the size of the booth; 0 is put together. */
  readonly apart?: number | undefined;
}

const usualView: View = { yaw: 35, pitch: 30 };

/** The panels drawn apart, each with its number, looked at from any side; the table has their masses and the order of building. */
export function explodedView(
  name: string,
  result: BoothResult | undefined,
  options: ExplodedOptions,
): Drawing | NotDrawn {
  const id = `exploded-${name}`;
  const title = `Panels of ${name}, drawn apart`;
  const panels = result?.build.panels ?? [];
  if (result === undefined || panels.length === 0) {
    const why = result === undefined ? `${name} is not assessed` : (result.build.panelsWhy ?? 'there are no panels');
    return { kind: 'exploded', id, title, why };
  }
  const yaw = finite(options.yaw, usualView.yaw);
  const pitch = Math.max(-90, Math.min(90, finite(options.pitch, usualView.pitch)));
  const apart = Math.max(0, Math.min(2, finite(options.apart, 0.45)));
  const boxes = spreadOut(panels, result.geometry.outsideM, apart);
  const { columns, rows } = panelRows(result, options.units);
  return finishDrawing(
    {
      kind: 'exploded',
      id,
      title,
      description: `${panels.length} panels: ${rows.map((row) => row.slice(0, 4).join(', ')).join('; ')}.`,
      notes: [
        `Mass: ${panels.map((panel) => `${panel.number}:\u00a0${panelMass(panel)}`).join(', ')}.`,
        'A panel that is hidden behind others shows no number; turned to another side it does.',
        ...panelSteps(result),
      ],
      toScale: false,
      table: { caption: `Panels of ${name}`, columns, rows },
      paper: { widthMm: 180, heightMm: 200 },
      extent: extentOf(boxes, { yaw, pitch }),
      draw: (canvas) => draw(canvas, panels, boxes, { yaw, pitch }),
    },
    options,
  );
}

function finite(value: number | undefined, otherwise: number): number {
  return value !== undefined && Number.isFinite(value) ? value : otherwise;
}

/** Every face moved out along its normal, the outer shell farther than the inner. */
function spreadOut(panels: readonly PanelResult[], [width, depth, height]: Vector, apart: number): BoxInBooth[] {
  const ways: Readonly<Record<PanelResult['face'], Vector>> = {
    front: [0, -depth, 0],
    back: [0, depth, 0],
    left: [-width, 0, 0],
    right: [width, 0, 0],
    roof: [0, 0, height],
    floor: [0, 0, -height],
  };
  return panels.map(({ box, face, leaf }) => {
    const far = apart * (leaf === 'inner' ? 0.5 : 1);
    const [dx, dy, dz] = ways[face];
    return { ...box, xM: box.xM + dx * far, yM: box.yM + dy * far, zM: box.zM + dz * far };
  });
}

/** How wide and high the boxes are on the picture, m. */
function extentOf(boxes: readonly BoxInBooth[], view: View): { width: number; height: number } {
  const { flat } = projection(view);
  const corners = boxes.flatMap((box) =>
    eight.map(([x, y, z]) => flat([box.xM + x * box.widthM, box.yM + y * box.depthM, box.zM + z * box.heightM])),
  );
  const span = (all: readonly number[]) => Math.max(...all) - Math.min(...all);
  return { width: span(corners.map(([right]) => right)), height: span(corners.map(([, up]) => up)) };
}

type Corner = (x: 0 | 1, y: 0 | 1, z: 0 | 1) => Point;

function draw(canvas: Canvas, panels: readonly PanelResult[], boxes: readonly BoxInBooth[], view: View): void {
  const { flat, towards } = projection(view);
  const { accent, paper, ink } = canvas.inks;
  const onPicture = (point: Vector): Point => {
    const [right, up] = flat(point);
    return [canvas.px(right), -canvas.px(up)];
  };
  const order = farToNear(boxes, towards);
  const drawn = order.map((index) => {
    const box = boxes[index]!;
    const corner: Corner = (x, y, z) =>
      onPicture([box.xM + x * box.widthM, box.yM + y * box.depthM, box.zM + z * box.heightM]);
    return { index, corner, outline: outline(eight.map(([x, y, z]) => corner(x, y, z))) };
  });
  const spots = new Map<number, Point>();
  drawn.forEach(({ index, corner }, place) => {
    const panel = panels[index]!;
    const sides = visible(towards, corner);
    for (const side of sides) {
      polygon(canvas, side.corners, { fill: paper, stroke: ink, 'stroke-width': 1 });
      polygon(canvas, side.corners, { fill: accent, 'fill-opacity': side.shade, stroke: 'none' });
    }
    for (const opening of openingsOf(panel, boxes[index]!, towards))
      polygon(canvas, opening.map(onPicture), {
        fill: paper,
        stroke: ink,
        'stroke-width': 0.8,
        'stroke-dasharray': '4 2',
      });
    const broad = sides[axisOf[panel.face]]!;
    const before = drawn.slice(place + 1).map((one) => one.outline);
    const spot = visibleSpot(broad.corners, before, radiusOf(panel));
    if (spot !== undefined) spots.set(index, spot);
  });
  balloons(canvas, panels, spots);
}

const eight = [0, 1].flatMap((x) => [0, 1].flatMap((y) => [0, 1].map((z) => [x, y, z] as [0 | 1, 0 | 1, 0 | 1])));
/** Which of the three visible sides is the broad one. */
const axisOf = { left: 0, right: 0, front: 1, back: 1, roof: 2, floor: 2 } as const;

/** The up to three sides that look at the eye, each with how dark it is drawn. */
function visible(towards: Vector, at: Corner): { corners: readonly [Point, Point, Point, Point]; shade: string }[] {
  const [x, y, z] = towards.map((part): 0 | 1 => (part > 0 ? 1 : 0)) as [0 | 1, 0 | 1, 0 | 1];
  return [
    { corners: [at(x, 0, 0), at(x, 1, 0), at(x, 1, 1), at(x, 0, 1)], shade: '0.28' },
    { corners: [at(0, y, 0), at(1, y, 0), at(1, y, 1), at(0, y, 1)], shade: '0.12' },
    { corners: [at(0, 0, z), at(1, 0, z), at(1, 1, z), at(0, 1, z)], shade: '0.05' },
  ];
}

function polygon(
  canvas: Canvas,
  corners: readonly Point[],
  attributes: Readonly<Record<string, string | number>>,
): void {
  const d = `${corners.map(([x, y], index) => `${index === 0 ? 'M' : 'L'}${round(x)} ${round(y)}`).join('')}Z`;
  const xs = corners.map(([x]) => x);
  const ys = corners.map(([, y]) => y);
  canvas.shape(svgElement('path', { d, ...attributes }), {
    left: Math.min(...xs),
    right: Math.max(...xs),
    top: Math.min(...ys),
    bottom: Math.max(...ys),
  });
}

/** Doors and windows of a wall panel on the side of it that is seen, as seen from outside counted from the left. */
function openingsOf(panel: PanelResult, box: BoxInBooth, towards: Vector): Vector[][] {
  if (panel.face === 'roof' || panel.face === 'floor') return [];
  return panel.openings.map(({ offsetM, baseM, widthM, heightM }) => {
    const at = (along: number, up: number): Vector => {
      const z = box.zM + baseM + up;
      const seen = offsetM + along;
      if (panel.face === 'front') return [box.xM + seen, box.yM + (towards[1] > 0 ? box.depthM : 0), z];
      if (panel.face === 'back') return [box.xM + box.widthM - seen, box.yM + (towards[1] > 0 ? box.depthM : 0), z];
      const x = box.xM + (towards[0] > 0 ? box.widthM : 0);
      return [x, panel.face === 'left' ? box.yM + box.depthM - seen : box.yM + seen, z];
    };
    return [at(0, 0), at(widthM, 0), at(widthM, heightM), at(0, heightM)];
  });
}

function radiusOf({ number }: PanelResult): number {
  return Math.max(textWidth(String(number), true), lineHeight) / 2 + 2;
}

/** Numbers in circles, each as near to its spot as those before it leave room. */
function balloons(canvas: Canvas, panels: readonly PanelResult[], spots: ReadonlyMap<number, Point>): void {
  const { ink, paper } = canvas.inks;
  const taken: Box[] = [];
  for (const [index, [x, y]] of [...spots].sort(([one], [other]) => one - other)) {
    const panel = panels[index]!;
    const radius = radiusOf(panel);
    const [cx, cy] = freeSpot(x, y, radius, taken);
    const box = { left: cx - radius, right: cx + radius, top: cy - radius, bottom: cy + radius };
    taken.push(box);
    if (cx !== x || cy !== y) {
      const line: [number, number][] = [
        [x, y],
        [cx, cy],
      ];
      canvas.line(line, { 'stroke-width': 0.8 });
      canvas.shape(svgElement('circle', { cx: x, cy: y, r: 1.8, fill: ink }), { left: x, right: x, top: y, bottom: y });
    }
    canvas.shape(svgElement('circle', { cx, cy, r: radius, fill: paper, stroke: ink }), box);
    canvas.text(String(panel.number), cx, cy, { anchor: 'middle', bold: true });
  }
}

function freeSpot(x: number, y: number, radius: number, taken: readonly Box[]): readonly [number, number] {
  for (let ring = 0; ring < 40; ring += 1) {
    for (let turn = 0; turn < Math.max(1, ring * 8); turn += 1) {
      const angle = (turn * 2 * Math.PI) / Math.max(1, ring * 8);
      const [cx, cy] = [x + ring * 7 * Math.cos(angle), y + ring * 7 * Math.sin(angle)];
      const box = { left: cx - radius, right: cx + radius, top: cy - radius, bottom: cy + radius };
      if (!taken.some((other) => overlaps(box, other))) return [cx, cy];
    }
  }
  return [x, y];
}
