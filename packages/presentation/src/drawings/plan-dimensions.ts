import type { Booth } from '@boothwright/language';
import type { DisplayUnits } from '../numbers/length-text.js';
import type { BoothFrame } from './booth-frame.js';
import type { Canvas } from './canvas.js';
import { acrossPoints, dimensionSides, upPoints } from './dimension-sides.js';
import { placedOpenings } from './placed-openings.js';

/** Openings of each side, then walls and linings, the inside and the outside. Returns where they end at the right, px. */
export function planDimensions(canvas: Canvas, booth: Booth, frame: BoothFrame, units: DisplayUnits): number {
  const [width, depth] = frame.outside;
  const [ox, oy] = frame.origin;
  const { lining, inside } = frame;
  const lengths = (face: 'front' | 'back' | 'left' | 'right', whole: number) => {
    const own = placedOpenings(booth, face, frame).flatMap(({ from, to }) => [from, to]);
    if (own.length === 0) return undefined;
    const mirrored = face === 'back' || face === 'left';
    return [0, ...own.map((m) => (mirrored ? whole - m : m)), whole];
  };
  const walls = (from: number, clear: number, low: number, high: number, whole: number) =>
    [0, from, from + low, from + clear - high, from + clear, whole].sort((a, b) => a - b);
  const across = (all: readonly number[] | undefined) => (all === undefined ? undefined : acrossPoints(canvas, all));
  const along = (all: readonly number[] | undefined) => (all === undefined ? undefined : upPoints(canvas, all));
  const linedAcross = lining.left + lining.right > 0;
  const linedAlong = lining.front + lining.back > 0;
  const reached = dimensionSides(
    canvas,
    {
      left: [
        lengths('left', depth),
        walls(oy, inside[1], lining.front, lining.back, depth),
        linedAlong ? [oy, oy + inside[1]] : undefined,
        [0, depth],
      ].map(along),
      right: [along(lengths('right', depth))],
      below: [
        lengths('front', width),
        walls(ox, inside[0], lining.left, lining.right, width),
        linedAcross ? [ox, ox + inside[0]] : undefined,
        [0, width],
      ].map(across),
      above: [across(lengths('back', width))],
    },
    { left: 0, right: canvas.px(width), top: -canvas.px(depth), bottom: 0 },
    units,
  );
  const middle = { x: canvas.px(width / 2), y: -canvas.px(depth / 2) };
  canvas.text('front', middle.x, reached.bottom + 10, { anchor: 'middle', bold: true });
  canvas.text('back', middle.x, reached.top - 10, { anchor: 'middle', bold: true });
  canvas.text('left', reached.left - 10, middle.y, { turned: true, bold: true });
  return reached.right;
}
