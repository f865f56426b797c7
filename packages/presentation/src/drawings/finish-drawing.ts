import { escapeXml, round, svgElement } from '../charts/svg-element.js';
import { type DisplayUnits, lengthText } from '../numbers/length-text.js';
import { printable } from '../text/printable.js';
import { type Canvas, createCanvas, inksOf, pxPerMm } from './canvas.js';
import type { Drawing, DrawingKind, DrawingOptions, DrawingTable } from './drawing.js';
import { lineHeight, shortened, wrapped } from './text-box.js';

/** What A4 and Letter both leave within margins of 15 mm. */
export const usualPaper = { widthMm: 180, heightMm: 245 } as const;
const usualScales = [1, 2, 5, 10, 15, 20, 25, 30, 40, 50, 75, 100, 150, 200] as const;
const margin = 6;
/** Title and notes of a narrow drawing may be wider than it, px. */
const noteWidth = 400;

export interface Sketch {
  readonly kind: DrawingKind;
  readonly id: string;
  readonly title: string;
  readonly description: string;
  readonly table: DrawingTable;
  /** Sentences below the drawing: what is assumed, what is not drawn. */
  readonly notes: readonly string[];
  /** False for a view that no length can be taken from. */
  readonly toScale?: boolean;
  /** Paper that suits it better than the usual sheet. */
  readonly paper?: { readonly widthMm: number; readonly heightMm: number };
  /** m that it takes at least, so that scales at which it is far too large need no trying. */
  readonly extent?: { readonly width: number; readonly height: number };
  readonly draw: (canvas: Canvas) => void;
}

/** Draws at the scale that is asked for, or at the largest usual one that fits on the paper. */
export function finishDrawing(sketch: Sketch, options: DrawingOptions): Drawing {
  const paper = options.paper ?? sketch.paper ?? usualPaper;
  const given = options.scale !== undefined && options.scale > 0 && Number.isFinite(options.scale);
  const { width = 0, height = 0 } = sketch.extent ?? {};
  const hopeless = (scale: number) =>
    (width * 1000) / scale > paper.widthMm || (height * 1000) / scale > paper.heightMm;
  const able = usualScales.filter((scale) => !hopeless(scale));
  const scales = given ? [options.scale as number] : able.length > 0 ? able : usualScales.slice(-1);
  let drawing: Drawing | undefined;
  for (const scale of scales) {
    drawing = drawnAt(sketch, scale, options);
    if (drawing.widthMm <= paper.widthMm && drawing.heightMm <= paper.heightMm) break;
  }
  return drawing as Drawing;
}

function drawnAt(sketch: Sketch, scale: number, { units, theme }: DrawingOptions): Drawing {
  const { kind, id, table, description, toScale = true } = sketch;
  const inks = inksOf(theme);
  const canvas = createCanvas(scale, inks);
  sketch.draw(canvas);
  const title = printable(sketch.title);
  const drawn = canvas.bounds();
  const width = Math.max(220, drawn.right - drawn.left);
  const room = Math.max(width, noteWidth);
  const said = toScale ? `1 : ${scale}, ${unitWords(units)}` : 'not to scale';
  canvas.text(shortened(title, room, true), drawn.left, drawn.top - 8 - 1.5 * lineHeight, { bold: true });
  canvas.text(shortened(said, room), drawn.left, drawn.top - 8 - lineHeight / 2);
  let below = drawn.bottom + 10;
  if (toScale) below = scaleBar(canvas, drawn.left, below, width, units);
  for (const note of sketch.notes) {
    for (const line of wrapped(printable(note), room)) {
      canvas.text(line, drawn.left, below + lineHeight / 2);
      below += lineHeight;
    }
    below += 3;
  }
  const { left, top, right, bottom } = canvas.bounds();
  const box = { x: round(left - margin), y: round(top - margin) };
  const size = { width: round(right - left + 2 * margin), height: round(bottom - top + 2 * margin) };
  const widthMm = Math.round((size.width / pxPerMm) * 1000) / 1000;
  const heightMm = Math.round((size.height / pxPerMm) * 1000) / 1000;
  const background = theme === 'sheet' ? svgElement('rect', { ...box, ...size, fill: inks.paper }) : '';
  const svg = svgElement(
    'svg',
    {
      xmlns: 'http://www.w3.org/2000/svg',
      role: 'img',
      width: `${widthMm}mm`,
      height: `${heightMm}mm`,
      viewBox: `${box.x} ${box.y} ${size.width} ${size.height}`,
      'data-drawing': id,
    },
    `<title>${escapeXml(title)}</title><desc>${escapeXml(printable(description))}</desc>${background}${canvas.content()}`,
  );
  return {
    kind,
    id,
    title,
    svg,
    description,
    scale,
    widthMm,
    heightMm,
    table: printableTable(table),
    marks: canvas.marks,
  };
}

function unitWords(units: DisplayUnits): string {
  return units === 'metric' ? 'lengths in mm' : 'lengths in feet and inches';
}

/** A bar of a round length, so that a copy of another size still tells its scale. Returns where it ends. */
function scaleBar(canvas: Canvas, left: number, top: number, width: number, units: DisplayUnits): number {
  const lengths =
    units === 'metric'
      ? [0.01, 0.02, 0.05, 0.1, 0.2, 0.5, 1, 2, 5]
      : [0.5, 1, 2, 6, 12, 24, 60, 120].map((inches) => inches * 0.0254);
  const length = [...lengths].reverse().find((m) => canvas.px(m) <= Math.min(130, width / 2)) ?? lengths[0]!;
  const end = left + canvas.px(length);
  const y = top + 6;
  canvas.rectangle({ left, right: end, top: y - 2, bottom: y + 2 });
  canvas.rectangle({ left, right: (left + end) / 2, top: y - 2, bottom: y + 2 }, { fill: canvas.inks.ink });
  canvas.text(lengthText(length, units), end + 6, y);
  return top + lineHeight + 2;
}

function printableTable({ caption, columns, rows }: DrawingTable): DrawingTable {
  return { caption: printable(caption), columns, rows: rows.map((row) => row.map(printable)) };
}
