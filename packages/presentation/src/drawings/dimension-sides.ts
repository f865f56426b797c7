import type { DisplayUnits } from '../numbers/length-text.js';
import type { Canvas } from './canvas.js';
import { type Chain, dimensionChain } from './dimension-chain.js';
import type { Box } from './text-box.js';

/** Chains of each side from the drawing outwards; one without points is left out. */
export type Sides = Readonly<Partial<Record<Chain['side'], readonly (Chain['points'] | undefined)[]>>>;

const ends = { left: 'left', right: 'right', above: 'top', below: 'bottom' } as const;

/**
 * Dimension chains around what is drawn, whose edges are `edges`. Columns come first, so that rows below and above start
 * beyond whatever a crowded column takes. Returns where they end.
 */
export function dimensionSides(canvas: Canvas, sides: Sides, edges: Box, units: DisplayUnits): Box {
  const reached = { left: 0, right: 0, top: 0, bottom: 0 };
  for (const pair of [['left', 'right'] as const, ['above', 'below'] as const]) {
    const drawn = canvas.bounds();
    for (const side of pair) {
      const end = ends[side];
      let from = drawn[end];
      let edge: number | undefined = edges[end];
      for (const points of sides[side] ?? []) {
        if (points === undefined) continue;
        from = dimensionChain(canvas, { points, from, side, ...(edge === undefined ? {} : { edge }) }, units);
        edge = undefined;
      }
      reached[end] = from;
    }
  }
  return reached;
}

/** The same lengths as places on the drawing, across it or upwards. */
export function acrossPoints(canvas: Canvas, metres: readonly number[]): Chain['points'] {
  return metres.map((m) => ({ m, px: canvas.px(m) }));
}

export function upPoints(canvas: Canvas, metres: readonly number[]): Chain['points'] {
  return metres.map((m) => ({ m, px: -canvas.px(m) }));
}
