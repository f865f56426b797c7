import type { Booth } from '@boothwright/language';
import type { DisplayUnits } from '../numbers/length-text.js';
import type { BoothFrame } from './booth-frame.js';
import type { Canvas } from './canvas.js';
import { dimensionChain } from './dimension-chain.js';
import { placedOpenings } from './placed-openings.js';

/** Openings of each side, then walls and linings, the inside and the outside. Returns where they end at the right, px. */
export function planDimensions(canvas: Canvas, booth: Booth, frame: BoothFrame, units: DisplayUnits): number {
  const [width, depth] = frame.outside;
  const [ox, oy] = frame.origin;
  const { lining, inside } = frame;
  const drawn = canvas.bounds();
  const across = (all: readonly number[]) => all.map((m) => ({ m, px: canvas.px(m) }));
  const along = (all: readonly number[]) => all.map((m) => ({ m, px: -canvas.px(m) }));
  const lengths = (face: 'front' | 'back' | 'left' | 'right', whole: number) => {
    const own = placedOpenings(booth, face, frame).flatMap(({ from, to }) => [from, to]);
    if (own.length === 0) return undefined;
    const mirrored = face === 'back' || face === 'left';
    return [0, ...own.map((m) => (mirrored ? whole - m : m)), whole];
  };
  const walls = (from: number, clear: number, low: number, high: number, whole: number) =>
    [0, from, from + low, from + clear - high, from + clear, whole].sort((a, b) => a - b);
  const edge = (from: number) => (from === drawn.bottom || from === drawn.left ? { edge: 0 } : {});
  let below = drawn.bottom;
  let left = drawn.left;
  const rows = [
    lengths('front', width),
    walls(ox, inside[0], lining.left, lining.right, width),
    ...(lining.left + lining.right > 0 ? [[ox, ox + inside[0]]] : []),
    [0, width],
  ];
  for (const row of rows)
    if (row !== undefined)
      below = dimensionChain(canvas, { points: across(row), ...edge(below), from: below, side: 'below' }, units);
  const columns = [
    lengths('left', depth),
    walls(oy, inside[1], lining.front, lining.back, depth),
    ...(lining.front + lining.back > 0 ? [[oy, oy + inside[1]]] : []),
    [0, depth],
  ];
  for (const row of columns)
    if (row !== undefined)
      left = dimensionChain(canvas, { points: along(row), ...edge(left), from: left, side: 'left' }, units);
  const back = lengths('back', width);
  const top = -canvas.px(depth);
  const above =
    back === undefined
      ? drawn.top
      : dimensionChain(canvas, { points: across(back), edge: top, from: drawn.top, side: 'above' }, units);
  const right = lengths('right', depth);
  const rightEdge = canvas.px(width);
  const after =
    right === undefined
      ? drawn.right
      : dimensionChain(canvas, { points: along(right), edge: rightEdge, from: drawn.right, side: 'right' }, units);
  const middle = { x: canvas.px(width / 2), y: -canvas.px(depth / 2) };
  canvas.text('front', middle.x, below + 10, { anchor: 'middle', bold: true });
  canvas.text('back', middle.x, above - 10, { anchor: 'middle', bold: true });
  canvas.text('left', left - 10, middle.y, { turned: true, bold: true });
  return after;
}
