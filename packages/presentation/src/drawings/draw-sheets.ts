import type { BoothResult, PlacedPart, SheetLayout } from '@boothwright/assessment';
import { formatNumber } from '../numbers/format-number.js';
import { type DisplayUnits, lengthFigure, lengthText } from '../numbers/length-text.js';
import { type Callout, callouts } from './callouts.js';
import type { Canvas } from './canvas.js';
import { acrossPoints, dimensionSides, upPoints } from './dimension-sides.js';
import type { Drawing, DrawingOptions, NotDrawn } from './drawing.js';
import { finishDrawing } from './finish-drawing.js';
import { inBox } from './in-box.js';
import { largestOffcut } from './largest-offcut.js';
import type { Box } from './text-box.js';

type Build = Pick<BoothResult['build'], 'sheetLayouts' | 'parts'>;
type Sheet = SheetLayout['sheets'][number];

/** Every sheet to cut, with its pieces and the largest piece left over; sheets that are cut alike share a drawing. */
export function drawSheets(build: Build, options: DrawingOptions): (Drawing | NotDrawn)[] {
  return build.sheetLayouts.flatMap((layout, kind): (Drawing | NotDrawn)[] => {
    if (layout.why !== null || layout.sheets.length === 0) {
      const title = `Sheets of ${layout.stock}`;
      const why = layout.why ?? 'no piece of it fits on a sheet';
      return [{ kind: 'sheet', id: `sheet-${kind + 1}`, title, why: `${layout.stock}: ${why}` }];
    }
    return alike(layout.sheets).map((numbers) => drawSheet(build, layout, kind, numbers, options));
  });
}

/** Numbers of the sheets, from 0, that are cut in the same way; marks may differ only as the pieces do. */
function alike(sheets: readonly Sheet[]): number[][] {
  const groups = new Map<string, number[]>();
  sheets.forEach((sheet, index) => {
    const key = JSON.stringify(sheet.parts.map(({ mark, xM, yM, widthM, heightM }) => [mark, xM, yM, widthM, heightM]));
    groups.set(key, [...(groups.get(key) ?? []), index]);
  });
  return [...groups.values()];
}

function drawSheet(
  build: Build,
  layout: SheetLayout,
  kind: number,
  numbers: readonly number[],
  options: DrawingOptions,
): Drawing {
  const { units } = options;
  const sheet = layout.sheets[numbers[0]!]!;
  const which = numbers.map((number) => number + 1).join(', ');
  const title = `${layout.stock}, sheet ${which} of ${layout.sheets.length}`;
  const owners = new Map(build.parts.map((part) => [part.mark, part]));
  const whole = layout.sheetWidthM * layout.sheetHeightM;
  const left = Math.max(0, 1 - sheet.usedM2 / whole);
  const size = `${lengthText(layout.sheetWidthM, units)} × ${lengthText(layout.sheetHeightM, units)}`;
  const offcut = largestOffcut(sheet.parts, layout.sheetWidthM, layout.sheetHeightM, layout.kerfM);
  const offcutText =
    offcut === undefined ? '–' : `${lengthText(offcut.widthM, units)} × ${lengthText(offcut.heightM, units)}`;
  return finishDrawing(
    {
      kind: 'sheet',
      id: `sheet-${kind + 1}-${numbers[0]! + 1}`,
      title,
      description: `Sheet of ${size} with ${sheet.parts.length === 1 ? 'one piece' : `${sheet.parts.length} pieces`}: ${sheet.parts.map((part) => `${part.mark} ${pieceSize(part, units)}`).join('; ')}. ${formatNumber(left * 100)} % left over, the largest piece ${offcutText}.`,
      notes: [
        `The saw takes ${lengthText(layout.kerfM, units)}; ${formatNumber(left * 100)} % of the sheet is left over, in one piece at most ${offcutText} (hatched).`,
        ...(sheet.edgeToEdge ? [] : ['This sheet needs a cut that stops short of the edge.']),
        ...(layout.assumedSize ? ['The size of the sheet is assumed: the material gives none.'] : []),
      ],
      table: {
        caption: `${title}, ${size}, from its lower left corner`,
        columns: ['piece', 'for', 'size as it lies', 'from the left', 'from below', 'turned'],
        rows: [
          ...sheet.parts.map((part) => [
            part.mark,
            owners.get(part.mark)?.owner ?? '',
            pieceSize(part, units),
            lengthText(part.xM, units),
            lengthText(part.yM, units),
            part.turned ? 'yes' : 'no',
          ]),
          ['largest offcut', '', offcutText, '', '', ''],
        ],
      },
      paper: { widthMm: 180, heightMm: 130 },
      extent: longSideAcross(layout),
      draw: (canvas) => draw(canvas, layout, sheet, offcut, units),
    },
    options,
  );
}

function longSideAcross({ sheetWidthM, sheetHeightM }: SheetLayout): { width: number; height: number } {
  return { width: Math.max(sheetWidthM, sheetHeightM), height: Math.min(sheetWidthM, sheetHeightM) };
}

function pieceSize({ widthM, heightM }: PlacedPart, units: DisplayUnits): string {
  return `${lengthText(widthM, units)} × ${lengthText(heightM, units)}`;
}

function draw(
  canvas: Canvas,
  layout: SheetLayout,
  sheet: Sheet,
  offcut: { xM: number; yM: number; widthM: number; heightM: number } | undefined,
  units: DisplayUnits,
): void {
  const { accent } = canvas.inks;
  // The long side of a sheet lies across the page.
  const lies = layout.sheetHeightM > layout.sheetWidthM;
  const box = (part: { xM: number; yM: number; widthM: number; heightM: number }): Box => {
    const [x, y, w, h] = lies
      ? [part.yM, part.xM, part.heightM, part.widthM]
      : [part.xM, part.yM, part.widthM, part.heightM];
    return { left: canvas.px(x), right: canvas.px(x + w), top: -canvas.px(y + h), bottom: -canvas.px(y) };
  };
  const whole = { xM: 0, yM: 0, widthM: layout.sheetWidthM, heightM: layout.sheetHeightM };
  if (offcut !== undefined) {
    hatched(canvas, box(offcut));
    canvas.rectangle(box(offcut), { 'stroke-width': 0.6, 'stroke-dasharray': '4 3' });
  }
  canvas.rectangle(box(whole), { 'stroke-width': 1.8 });
  const named: Callout[] = [];
  for (const part of sheet.parts) {
    const own = box(part);
    canvas.rectangle(own, { fill: accent, 'fill-opacity': '0.14', 'stroke-width': 1 });
    const size = lies
      ? `${lengthFigure(part.heightM, units)} × ${lengthFigure(part.widthM, units)}`
      : `${lengthFigure(part.widthM, units)} × ${lengthFigure(part.heightM, units)}`;
    if (!inBox(canvas, own, [[part.mark, size], [`${part.mark}  ${size}`], [part.mark]])) {
      named.push({ text: `${part.mark}  ${size}`, x: (own.left + own.right) / 2, y: (own.top + own.bottom) / 2 });
    }
  }
  const { width: across, height: up } = longSideAcross(layout);
  const sides = { left: [upPoints(canvas, [0, up])], below: [acrossPoints(canvas, [0, across])] };
  dimensionSides(canvas, sides, canvas.bounds(), units);
  if (named.length > 0) callouts(canvas, named, canvas.px(across) + 4, 150);
}

function hatched(canvas: Canvas, { left, top, right, bottom }: Box): void {
  const height = bottom - top;
  for (let foot = left - height + 9; foot < right; foot += 9) {
    const from = Math.max(foot, left);
    const to = Math.min(foot + height, right);
    const ends: [number, number][] = [
      [from, bottom - (from - foot)],
      [to, bottom - (to - foot)],
    ];
    canvas.line(ends, { 'stroke-width': 0.5, 'stroke-opacity': '0.5' });
  }
}
