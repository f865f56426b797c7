import type { BoothResult, LengthLayout } from '@boothwright/assessment';
import { formatNumber } from '../numbers/format-number.js';
import { lengthText } from '../numbers/length-text.js';
import type { Canvas } from './canvas.js';
import { dimensionChain } from './dimension-chain.js';
import type { Drawing, DrawingOptions, NotDrawn } from './drawing.js';
import { finishDrawing } from './finish-drawing.js';
import { lineHeight } from './text-box.js';

/** How lumber and strips are cut off the lengths that are sold: a bar for every way of cutting one. */
export function drawLengths(
  { lengthLayouts }: Pick<BoothResult['build'], 'lengthLayouts'>,
  options: DrawingOptions,
): (Drawing | NotDrawn)[] {
  return lengthLayouts.map((layout, kind): Drawing | NotDrawn => {
    const id = `lengths-${kind + 1}`;
    const title = `Lengths of ${layout.stock}`;
    if (layout.why !== null || layout.patterns.length === 0) {
      return { kind: 'lengths', id, title, why: `${layout.stock}: ${layout.why ?? 'no piece fits into a length'}` };
    }
    const { units } = options;
    const length = (metres: number) => lengthText(metres, units);
    const saw = layout.kerfM > 0 ? ` The saw takes ${length(layout.kerfM)} at every cut.` : '';
    return finishDrawing(
      {
        kind: 'lengths',
        id,
        title,
        description: `${layout.lengths} lengths of ${length(layout.stockLengthM)}: ${layout.patterns.map(({ count, cutsM, offcutM }) => `${count} times ${cutsM.map(length).join(' + ')}, left over ${length(offcutM)}`).join('; ')}.`,
        notes: [
          `${layout.lengths} lengths of ${length(layout.stockLengthM)}, ${formatNumber(layout.wasteShare * 100)} % left over (hatched).${saw}`,
          ...(layout.assumedLength ? ['The length is assumed: the material gives none.'] : []),
        ],
        table: {
          caption: title,
          columns: ['how many', 'cut into', 'left over'],
          rows: layout.patterns.map(({ count, cutsM, offcutM }) => [
            String(count),
            cutsM.map(length).join(' + '),
            length(offcutM),
          ]),
        },
        extent: { width: layout.stockLengthM, height: 0 },
        draw: (canvas) => draw(canvas, layout, options),
      },
      options,
    );
  });
}

function draw(canvas: Canvas, { stockLengthM, patterns, kerfM }: LengthLayout, { units }: DrawingOptions): void {
  const { accent } = canvas.inks;
  const high = 12;
  let top = 0;
  for (const { count, cutsM, offcutM } of patterns) {
    const bottom = top + high;
    canvas.rectangle({ left: 0, right: canvas.px(stockLengthM), top, bottom }, { 'stroke-width': 1.4 });
    const points = [{ m: 0, px: 0 }];
    let reached = 0;
    for (const cut of cutsM) {
      const box = { left: canvas.px(reached), right: canvas.px(reached + cut), top, bottom };
      canvas.rectangle(box, { fill: accent, 'fill-opacity': '0.14' });
      if (reached > 0) points.push({ m: reached, px: box.left });
      reached += cut;
      points.push({ m: reached, px: box.right });
      reached += kerfM;
    }
    const rest = stockLengthM - offcutM;
    if (offcutM > 0) points.push({ m: rest, px: canvas.px(rest) });
    for (let x = canvas.px(rest) + 4; x < canvas.px(stockLengthM); x += 6) {
      const ends: [number, number][] = [
        [x, bottom],
        [Math.min(x + 5, canvas.px(stockLengthM)), top],
      ];
      canvas.line(ends, { 'stroke-width': 0.5, 'stroke-opacity': '0.6' });
    }
    canvas.text(`${count} ×`, -8, top + high / 2, { anchor: 'end', bold: true });
    points.push({ m: stockLengthM, px: canvas.px(stockLengthM) });
    const end = dimensionChain(
      canvas,
      { points, leastM: Math.max(kerfM, 0.002) + 1e-6, edge: bottom - 3, from: bottom - 6, side: 'below' },
      units,
    );
    top = Math.max(end, bottom + lineHeight) + 10;
  }
}
