import type { SourceRange } from '@boothwright/language';
import { svgElement } from '../charts/svg-element.js';
import { printable } from '../text/printable.js';
import type { Canvas } from './canvas.js';
import { spread } from './spread.js';
import { lineHeight, wrapped } from './text-box.js';

export interface Callout {
  readonly text: string;
  /** What it tells of, px. */
  readonly x: number;
  readonly y: number;
  /** Where it stands in the text; nothing for what has no line of its own. */
  readonly range?: SourceRange | undefined;
}

/** The slanting part of a line from a thing to its name, px. */
export interface Leader {
  readonly from: readonly [number, number];
  readonly to: readonly [number, number];
}

/** Names of things beside the drawing, from the top down as the things are, each with a thin line to its thing. */
export function callouts(canvas: Canvas, all: readonly Callout[], left: number, room = 160): Leader[] {
  const sorted = [...all].sort((one, other) => one.y - other.y || one.x - other.x);
  const lines = sorted.map(({ text }) => wrapped(printable(text), room));
  const middles = spread(
    sorted.map(({ y }) => y),
    lines.map((own) => own.length * lineHeight),
    4,
  );
  return sorted.map(({ x, y, range }, index) => {
    const own = lines[index]!;
    const middle = middles[index]!;
    const draw = () => {
      const points: [number, number][] = [
        [x, y],
        [left + 8, middle],
        [left + 15, middle],
      ];
      canvas.line(points, { 'stroke-width': 0.6, 'stroke-opacity': '0.7' });
      const dot = svgElement('circle', { cx: x, cy: y, r: 1.8, fill: canvas.inks.ink });
      canvas.shape(dot, { left: x - 2, right: x + 2, top: y - 2, bottom: y + 2 });
      own.forEach((line, row) => {
        canvas.text(line, left + 18, middle + (row - (own.length - 1) / 2) * lineHeight);
      });
    };
    if (range === undefined) draw();
    else canvas.mark(range, draw);
    return { from: [x, y], to: [left + 8, middle] };
  });
}

/** Where a turned text of this length can stand at `x` between `top` and `bottom` without a leader through it, near the middle. */
export function clearOf(
  leaders: readonly Leader[],
  x: number,
  length: number,
  top: number,
  bottom: number,
): number | undefined {
  const crossings = leaders.flatMap(({ from, to }) =>
    [x - 8, x + 8]
      .filter((at) => at >= from[0] && at <= to[0])
      .map((at) => from[1] + ((to[1] - from[1]) * (at - from[0])) / Math.max(1e-9, to[0] - from[0])),
  );
  const middle = (top + bottom) / 2;
  for (let step = 0; step <= (bottom - top) / 2; step += 4)
    for (const y of [middle + step, middle - step])
      if (crossings.every((crossing) => Math.abs(crossing - y) > length / 2 + 4)) return y;
  return undefined;
}
