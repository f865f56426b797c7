import { round, svgElement } from '../charts/svg-element.js';
import type { Canvas } from './canvas.js';
import type { Box } from './text-box.js';

/** How a cut surface is filled, so that what it is made of can be told without colour. */
export type Filling = 'board' | 'sheet' | 'porous' | 'air' | 'timber' | 'cloth' | 'covering' | 'wall';

const thin = { 'stroke-width': 0.6, 'stroke-opacity': '0.75' } as const;

/** A cut surface with its outline. */
export function cutSurface(canvas: Canvas, box: Box, filling: Filling): void {
  const { ink } = canvas.inks;
  const path = (d: string, attributes: Readonly<Record<string, string | number>> = thin) => {
    if (d !== '') canvas.shape(svgElement('path', { d, fill: 'none', stroke: ink, ...attributes }), box);
  };
  if (filling === 'sheet') {
    canvas.rectangle(box, { fill: ink });
    return;
  }
  if (filling === 'cloth') {
    const y = round((box.top + box.bottom) / 2);
    path(`M${round(box.left)} ${y}H${round(box.right)}`, { 'stroke-width': 2, 'stroke-dasharray': '5 3' });
    return;
  }
  if (filling === 'board') path(diagonals(box, 7));
  if (filling === 'wall') path(diagonals(box, 4.5));
  if (filling === 'porous') path(zigzag(box));
  if (filling === 'covering') path(uprights(box, 4));
  if (filling === 'timber') {
    const [left, top, right, bottom] = [box.left, box.top, box.right, box.bottom].map(round);
    path(`M${left} ${top}L${right} ${bottom}M${left} ${bottom}L${right} ${top}`);
  }
  canvas.rectangle(box, filling === 'air' ? { ...thin, 'stroke-dasharray': '2 3' } : { 'stroke-width': 1 });
}

/** Lines rising to the right, clipped to the box. */
function diagonals({ left, top, right, bottom }: Box, step: number): string {
  const height = bottom - top;
  let d = '';
  for (let foot = left - height + step; foot < right; foot += step) {
    const x1 = Math.max(foot, left);
    const x2 = Math.min(foot + height, right);
    if (x2 - x1 > 0.5) d += `M${round(x1)} ${round(bottom - (x1 - foot))}L${round(x2)} ${round(bottom - (x2 - foot))}`;
  }
  return d;
}

/** A line to and fro across the shorter side, as soft fill is drawn. */
function zigzag({ left, top, right, bottom }: Box): string {
  const lying = right - left >= bottom - top;
  const [from, to, near, far] = lying ? [left, right, top, bottom] : [top, bottom, left, right];
  const count = Math.max(2, Math.round((to - from) / Math.min(9, Math.max(4, (far - near) * 0.5))));
  let d = '';
  for (let index = 0; index <= count; index += 1) {
    const along = round(from + ((to - from) * index) / count);
    const across = round(index % 2 === 0 ? near : far);
    d += `${index === 0 ? 'M' : 'L'}${lying ? `${along} ${across}` : `${across} ${along}`}`;
  }
  return d;
}

function uprights({ left, top, right, bottom }: Box, step: number): string {
  let d = '';
  for (let x = left + step; x < right; x += step) d += `M${round(x)} ${round(top)}V${round(bottom)}`;
  return d;
}
