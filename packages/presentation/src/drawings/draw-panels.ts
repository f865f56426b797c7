import type { BoothResult, PanelResult } from '@boothwright/assessment';
import { lengthText } from '../numbers/length-text.js';
import { faceNames } from './booth-frame.js';
import { type Callout, callouts } from './callouts.js';
import type { Canvas } from './canvas.js';
import { dimensionSides } from './dimension-sides.js';
import type { Drawing, DrawingOptions, NotDrawn } from './drawing.js';
import { finishDrawing } from './finish-drawing.js';
import { inBox } from './in-box.js';
import { panelMass, panelRows, panelSteps, stepOf } from './panel-words.js';

type Group = { readonly face: PanelResult['face']; readonly leaf: PanelResult['leaf']; readonly panels: PanelResult[] };

/** The panels face by face as seen from outside: one drawing for each shell of a face. */
export function drawPanels(
  name: string,
  result: BoothResult | undefined,
  options: DrawingOptions,
): (Drawing | NotDrawn)[] {
  if (result === undefined || result.build.panels.length === 0) {
    const why = result === undefined ? `${name} is not assessed` : (result.build.panelsWhy ?? 'there are no panels');
    return [{ kind: 'panels', id: `panels-${name}`, title: `Panels of ${name}`, why }];
  }
  const groups = faceNames.flatMap((face) =>
    (['whole', 'outer', 'inner'] as const).flatMap((leaf): Group[] => {
      const panels = result.build.panels.filter((panel) => panel.face === face && panel.leaf === leaf);
      return panels.length > 0 ? [{ face, leaf, panels }] : [];
    }),
  );
  return groups.map((group) => drawFace(name, result, group, options));
}

function drawFace(name: string, result: BoothResult, { face, leaf, panels }: Group, options: DrawingOptions): Drawing {
  const { units } = options;
  const shell = leaf === 'whole' ? '' : `, ${leaf} shell`;
  const flat = face === 'roof' || face === 'floor';
  const title = `Panels of the ${face} of ${name}${shell}`;
  const { columns, rows } = panelRows(result, units);
  const own = rows.filter(([number]) => panels.some((panel) => String(panel.number) === number));
  const left = Math.min(...panels.map(({ offsetM }) => offsetM));
  const low = flat ? 0 : Math.min(...panels.map(({ baseM }) => baseM));
  return finishDrawing(
    {
      kind: 'panels',
      id: `panels-${face}${leaf === 'whole' ? '' : `-${leaf}`}`,
      title,
      description: own.map((row) => row.join(', ')).join('; '),
      notes: [
        flat ? 'As seen from above, the longer side across the page.' : 'As seen from outside.',
        ...panelSteps(result).filter((_, index) => {
          const numbers = result.moving?.assembly?.steps[index]?.panels ?? [];
          return panels.some(({ number }) => numbers.includes(number));
        }),
      ],
      table: { caption: title, columns, rows: own },
      extent: {
        width: panels.reduce((sum, { widthM, baseM }) => sum + (flat || baseM === low ? widthM : 0), 0),
        height: 0,
      },
      paper: { widthMm: 180, heightMm: 140 },
      draw: (canvas) => draw(canvas, result, panels, { left, low, flat }, options),
    },
    options,
  );
}

function draw(
  canvas: Canvas,
  result: BoothResult,
  panels: readonly PanelResult[],
  from: { readonly left: number; readonly low: number; readonly flat: boolean },
  { units }: DrawingOptions,
): void {
  const { accent } = canvas.inks;
  const named: Callout[] = [];
  const across = new Map<number, number>();
  const levels = new Map<number, number>();
  for (const panel of panels) {
    const x = panel.offsetM - from.left;
    const base = from.flat ? 0 : panel.baseM - from.low;
    const box = {
      left: canvas.px(x),
      right: canvas.px(x + panel.widthM),
      top: -canvas.px(base + panel.heightM),
      bottom: -canvas.px(base),
    };
    for (const m of [x, x + panel.widthM]) across.set(m, canvas.px(m));
    for (const m of [base, base + panel.heightM]) levels.set(m, -canvas.px(m));
    canvas.rectangle(box, { fill: accent, 'fill-opacity': '0.1', 'stroke-width': 1.4 });
    for (const { offsetM, baseM, widthM, heightM } of panel.openings) {
      const hole = {
        left: box.left + canvas.px(offsetM),
        right: box.left + canvas.px(offsetM + widthM),
        top: box.bottom - canvas.px(baseM + heightM),
        bottom: box.bottom - canvas.px(baseM),
      };
      canvas.rectangle(hole, { fill: canvas.inks.paper, 'stroke-dasharray': '4 2' });
    }
    const step = stepOf(result, panel);
    const number = String(panel.number);
    const said = step === undefined ? [] : [`step ${step}`];
    const lines = [number, panelMass(panel), ...said];
    if (!inBox(canvas, box, [lines, [number, panelMass(panel)]])) {
      const text = [`${number}: ${panelMass(panel)}`, ...said].join(', ');
      // Low in the panel, where the line does not run through what its neighbours say.
      named.push({ text, x: (box.left + box.right) / 2, y: box.bottom - (box.bottom - box.top) * 0.15 });
    }
  }
  const points = (all: ReadonlyMap<number, number>) => [...all].map(([m, px]) => ({ m, px }));
  const ends = (all: ReadonlyMap<number, number>) => {
    const sorted = points(all).sort((one, other) => one.m - other.m);
    return [sorted[0]!, sorted[sorted.length - 1]!];
  };
  const rows = [points(across), across.size > 2 ? ends(across) : undefined];
  const columns = [points(levels), levels.size > 2 ? ends(levels) : undefined];
  dimensionSides(canvas, { left: columns, below: rows }, canvas.bounds(), units);
  const thickness = panels[0]?.thicknessM ?? 0;
  canvas.text(`${lengthText(thickness, units)} thick`, 0, canvas.bounds().top - lineGap);
  if (named.length > 0) callouts(canvas, named, canvas.bounds().right + 4, 150);
}

const lineGap = 10;
