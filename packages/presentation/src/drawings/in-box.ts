import type { Canvas } from './canvas.js';
import { type Box, lineHeight, textWidth } from './text-box.js';

/** Puts the first of these into the box that fits, lying or, in a narrow piece, upright; false where none does. */
export function inBox(canvas: Canvas, box: Box, choices: readonly (readonly string[])[]): boolean {
  const [wide, high] = [box.right - box.left - 4, box.bottom - box.top - 2];
  const [x, y] = [(box.left + box.right) / 2, (box.top + box.bottom) / 2];
  for (const lines of choices) {
    const needs = Math.max(...lines.map((line, index) => textWidth(line, index === 0)));
    const tall = lines.length * lineHeight;
    const row = (index: number) => (index - (lines.length - 1) / 2) * lineHeight;
    if (needs <= wide && tall <= high) {
      lines.forEach((line, index) => {
        canvas.text(line, x, y + row(index), { anchor: 'middle', bold: index === 0 });
      });
      return true;
    }
    if (needs <= high && tall <= wide) {
      lines.forEach((line, index) => {
        canvas.text(line, x + row(index), y, { turned: true, bold: index === 0 });
      });
      return true;
    }
  }
  return false;
}
