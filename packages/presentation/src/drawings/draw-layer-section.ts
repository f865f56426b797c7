import type { Assembly, AssemblyLayer, FrameLayer } from '@boothwright/language';
import { formatNumber } from '../numbers/format-number.js';
import { lengthText } from '../numbers/length-text.js';
import { type Callout, callouts } from './callouts.js';
import { type Canvas, pxPerMm } from './canvas.js';
import { dimensionChain } from './dimension-chain.js';
import type { Drawing, DrawingOptions, NotDrawn } from './drawing.js';
import { finishDrawing } from './finish-drawing.js';
import { cutSurface } from './hatch.js';
import { fillingOf, layerKind, layersThickness, layerText, layerThickness } from './layer-words.js';

/** Of the stretch of wall that is shown, px. */
const stretch = 62 * pxPerMm;
/** A layer known by its mass alone is drawn this thick, px, and not measured. */
const thinnest = 2.5;

/** A cut through a build-up: outside above, inside below, every layer with its thickness, and the depth of the whole. */
export function drawLayerSection(assembly: Assembly, options: DrawingOptions): Drawing | NotDrawn {
  const id = `section-${assembly.name}`;
  const title = `Section of ${assembly.name}${assembly.title === undefined ? '' : `, ${assembly.title}`}`;
  const layers = assembly.layers.filter((layer) => layer.kind === 'material' || layerThickness(layer) > 0);
  const shown = layers.filter((layer) => layer.kind !== 'material' || layerThickness(layer) > 0 || known(layer));
  if (shown.length === 0) return { kind: 'section', id, title, why: `${assembly.name} has no layers` };
  const total = layersThickness(shown);
  const { units } = options;
  const spacings = shown.filter((layer): layer is FrameLayer => layer.kind === 'frame');
  const notes = [
    ...(spacings.length > 0 ? ['Along the wall only the width of a stud is to scale, not the distance of two.'] : []),
    ...(shown.some((layer) => layerThickness(layer) === 0)
      ? ['A layer without a thickness in the text is drawn as a line and counts nothing in the depth.']
      : []),
  ];
  return finishDrawing(
    {
      kind: 'section',
      id,
      title,
      description: `From outside to inside: ${shown.map((layer) => layerText(layer, units)).join('; ')}. ${lengthText(total, units)} deep.`,
      notes,
      table: {
        caption: `${title}, from outside to inside`,
        columns: ['layer', 'kind', 'thickness', 'surface mass'],
        rows: [
          ...shown.map((layer) => [layerText(layer, units), layerKind(layer), thickness(layer, options), mass(layer)]),
          ['whole depth', '', lengthText(total, units), ''],
        ],
      },
      paper: { widthMm: 180, heightMm: 105 },
      extent: { width: 0, height: total },
      draw: (canvas) => draw(canvas, shown, options),
    },
    options,
  );
}

function known(layer: AssemblyLayer): boolean {
  return layer.kind === 'material' && layer.thickness === undefined && layer.surfaceMass.value > 0;
}

function thickness(layer: AssemblyLayer, { units }: DrawingOptions): string {
  const metres = layerThickness(layer);
  return metres > 0 ? lengthText(metres, units) : 'not said';
}

function mass(layer: AssemblyLayer): string {
  return layer.kind === 'material' ? `${formatNumber(layer.surfaceMass.value, 1)} kg/m²` : '';
}

function draw(canvas: Canvas, layers: readonly AssemblyLayer[], { units }: DrawingOptions): void {
  const points: { px: number; m: number }[] = [{ px: 0, m: 0 }];
  const named: Callout[] = [];
  let top = 0;
  let reached = 0;
  for (const layer of layers) {
    const metres = layerThickness(layer);
    const height = Math.max(canvas.px(metres), thinnest);
    const box = { left: 0, right: stretch, top, bottom: top + height };
    if (layer.kind === 'air') cutSurface(canvas, box, 'air');
    else if (layer.kind === 'material') cutSurface(canvas, box, fillingOf(layer));
    else frame(canvas, layer, box.top);
    named.push({ text: layerText(layer, units), x: stretch - 6, y: top + height / 2, range: layer.range });
    top += height;
    reached += metres;
    points.push({ px: top, m: reached });
  }
  for (const end of [0, stretch]) {
    canvas.line(
      [
        [end, -4],
        [end, top + 4],
      ],
      { 'stroke-dasharray': '6 2 1.5 2' },
    );
  }
  canvas.text('outside', stretch / 2, -14, { anchor: 'middle', bold: true });
  canvas.text('inside', stretch / 2, top + 14, { anchor: 'middle', bold: true });
  const end = dimensionChain(canvas, { points, from: 0, side: 'left' }, units);
  if (points.length > 2) {
    const whole = [points[0]!, points[points.length - 1]!];
    dimensionChain(canvas, { points: whole, from: end, side: 'left' }, units);
  }
  callouts(canvas, named, stretch + 2, 230);
}

/** Two studs where the stretch has room for them, with the fill between; the rest of the depth is air. */
function frame(canvas: Canvas, { width, depth, spacing, fill }: FrameLayer, top: number): void {
  const bottom = top + canvas.px(depth.value);
  const stud = Math.min(canvas.px(width.value), stretch * 0.7);
  const apart = Math.max(Math.min(canvas.px(spacing.value), stretch * 0.55), stud * 1.5);
  const first = stretch * 0.12;
  const studs = [first, first + apart]
    .map((left) => ({ left, right: left + stud, top, bottom }))
    .filter(({ right }) => right <= stretch * 0.97);
  const edges = [0, ...studs.flatMap(({ left, right }) => [left, right]), stretch];
  const between = edges.flatMap((left, index) =>
    index % 2 === 0 ? [[left, edges[index + 1] ?? stretch] as const] : [],
  );
  const filled = fill === undefined ? 0 : Math.min(canvas.px(layerThickness(fill)), bottom - top);
  for (const [left, right] of between) {
    if (right - left < 1) continue;
    if (bottom - top - filled > 0.5) cutSurface(canvas, { left, right, top, bottom: bottom - filled }, 'air');
    if (fill !== undefined && filled > 0)
      cutSurface(canvas, { left, right, top: bottom - filled, bottom }, fillingOf(fill));
  }
  for (const box of studs) cutSurface(canvas, box, 'timber');
}
