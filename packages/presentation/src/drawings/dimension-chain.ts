import type { DisplayUnits } from '../numbers/length-text.js';
import { lengthFigure } from '../numbers/length-text.js';
import type { Canvas } from './canvas.js';
import { spread } from './spread.js';
import { lineHeight, textWidth } from './text-box.js';

export interface Chain {
  /** Where the ticks stand along the chain: px on the drawing, and m. */
  readonly points: readonly { readonly px: number; readonly m: number }[];
  /** px across the chain: where everything before it ends. */
  readonly from: number;
  /** px across the chain: where the lines from the drawing to it start; at `from` without it. */
  readonly edge?: number;
  /** m; shorter segments, such as the cut of a saw, carry no length. */
  readonly leastM?: number;
  readonly side: 'below' | 'above' | 'left' | 'right';
}

/** Segments thinner than this on the booth are not measured: rounding of sums. */
const leastM = 0.00005;
const tick = 3.5;

/**
 * A line with a tick at every point and the length of every segment beside it. A length that is wider than its segment
 * moves to a row of its own and keeps a thin line to it. Returns where the chain ends, px across it.
 */
export function dimensionChain(canvas: Canvas, chain: Chain, units: DisplayUnits): number {
  const points = [...chain.points]
    .sort((one, other) => one.m - other.m)
    .filter((point, index, all) => index === 0 || point.m - (all[index - 1]?.m ?? 0) > leastM)
    .sort((one, other) => one.px - other.px);
  if (points.length < 2) return chain.from;
  const flat = chain.side === 'below' || chain.side === 'above';
  const out = chain.side === 'below' || chain.side === 'right' ? 1 : -1;
  const at = chain.from + out * 10;
  const place = (along: number, across: number): [number, number] => (flat ? [along, across] : [across, along]);
  const thin = { 'stroke-width': 0.6 };
  const first = points[0]!;
  const last = points[points.length - 1]!;
  for (const { px } of points) {
    canvas.line([place(px, (chain.edge ?? chain.from) + out * 3), place(px, at + out * 3)], {
      ...thin,
      'stroke-opacity': '0.6',
    });
    canvas.line([place(px - tick, at + tick), place(px + tick, at - tick)], { 'stroke-width': 1.2 });
  }
  canvas.line([place(first.px, at), place(last.px, at)], thin);
  const segments = points.slice(1).flatMap((point, index) => {
    const before = points[index]!;
    const metres = Math.abs(point.m - before.m);
    if (metres <= (chain.leastM ?? 0)) return [];
    return [{ middle: (before.px + point.px) / 2, room: point.px - before.px, text: lengthFigure(metres, units) }];
  });
  return flat ? rows(canvas, segments, at, out) : column(canvas, segments, at, out);
}

interface Segment {
  readonly middle: number;
  readonly room: number;
  readonly text: string;
}

/** Lengths that fit stand in the first row, all others spread over a second. */
function rows(canvas: Canvas, segments: readonly Segment[], at: number, out: number): number {
  const fits = segments.filter(({ text, room }) => textWidth(text) + 2 <= room);
  const others = segments.filter((segment) => !fits.includes(segment));
  const first = at + out * (lineHeight / 2 + 1);
  for (const { text, middle } of fits) canvas.text(text, middle, first, { anchor: 'middle' });
  let end = at + out * (fits.length > 0 ? lineHeight + 1 : 3);
  if (others.length === 0) return end;
  const second = end + out * (lineHeight / 2 + 5);
  const middles = spread(
    others.map(({ middle }) => middle),
    others.map(({ text }) => textWidth(text)),
    6,
  );
  others.forEach(({ text, middle }, index) => {
    const to = middles[index]!;
    const leader: [number, number][] = [
      [middle, at],
      [middle, end],
      [to, second - out * (lineHeight / 2 - 1)],
    ];
    canvas.line(leader, { 'stroke-width': 0.6, 'stroke-opacity': '0.6' });
    canvas.text(text, to, second, { anchor: 'middle' });
  });
  end = second + out * (lineHeight / 2);
  return end;
}

function column(canvas: Canvas, segments: readonly Segment[], at: number, out: number): number {
  const middles = spread(
    segments.map(({ middle }) => middle),
    segments.map(() => lineHeight),
    1,
  );
  const moved = segments.some(({ middle }, index) => Math.abs(middle - middles[index]!) > 0.5);
  const start = at + out * (moved ? 14 : 5);
  let widest = 0;
  segments.forEach(({ text, middle }, index) => {
    const to = middles[index]!;
    if (moved) {
      const leader: [number, number][] = [
        [at, middle],
        [start - out * 2, to],
      ];
      canvas.line(leader, { 'stroke-width': 0.6, 'stroke-opacity': '0.6' });
    }
    canvas.text(text, start, to, { anchor: out > 0 ? 'start' : 'end' });
    widest = Math.max(widest, textWidth(text));
  });
  return start + out * widest;
}
