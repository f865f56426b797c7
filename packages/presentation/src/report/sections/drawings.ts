import { type Drawing, type DrawingKind, type DrawingOptions, isDrawn, type NotDrawn } from '../../drawings/drawing.js';
import { type DrawnFrom, drawingsOf } from '../../drawings/drawings-of.js';
import { ofBooth } from '../../text/section.js';
import { type Block, blocks, type Column, figureColumn, heading, list, type ReportSection, table } from '../blocks.js';
import { type Figures, withTable } from '../figures.js';
import type { ReportInput } from '../report-input.js';

/** mm for a drawing and its caption on A4 and on Letter: a whole page, half of one, a quarter. */
const whole: DrawingOptions = { units: 'metric', theme: 'page', paper: { widthMm: 180, heightMm: 222 } };
const half: DrawingOptions = { ...whole, paper: { widthMm: 180, heightMm: 108 } };
const quarter: DrawingOptions = { ...whole, paper: { widthMm: 86, heightMm: 108 } };
const sizes: Readonly<Partial<Record<DrawingKind, DrawingOptions>>> = {
  elevation: quarter,
  panels: quarter,
  sheet: quarter,
  room: half,
  section: half,
  lengths: half,
};
/** 1 : so much; smaller ones would be no help, so they get more paper. */
const smallestScale = 40;

const groups: readonly { readonly title: string; readonly kinds: readonly DrawingKind[] }[] = [
  { title: 'Room, plan and elevations', kinds: ['room', 'plan', 'elevation'] },
  { title: 'Panels', kinds: ['exploded', 'panels'] },
];

/** The booth to scale: in its room, from above and from its sides, its layers, its panels. */
export function drawingsSection(input: ReportInput, figures: Figures): ReportSection | undefined {
  const { result, spec } = input;
  const names = Object.keys(result.booths);
  const layers = drawnForPaper({ spec: { ...spec, booths: [] }, result: undefined });
  const drawn = blocks(
    ...names.flatMap((name) => {
      const all = drawnForPaper({ spec, result, booth: name });
      return groups.flatMap(({ title, kinds }) => {
        const own = all.filter(({ kind }) => kinds.includes(kind));
        return own.length === 0
          ? []
          : [heading(`${title}${ofBooth(name, names.length)}`), ...drawingBlocks(own, figures)];
      });
    }),
    layers.length > 0 && heading('Layers'),
    ...drawingBlocks(layers, figures),
  );
  if (drawn.length === 0) return undefined;
  return {
    id: 'drawings',
    title: 'Drawings',
    lead: 'Lengths in mm. Printed at 100 % each is at the scale that it names; a bar of a round length tells it at any other size.',
    blocks: drawn,
  };
}

/** Every drawing at a size that suits paper. */
function drawnForPaper(from: DrawnFrom): (Drawing | NotDrawn)[] {
  const halves = drawingsOf(from, half);
  const quarters = drawingsOf(from, quarter);
  return drawingsOf(from, whole).map((large, index) => {
    const size = sizes[large.kind];
    const smaller = [size === quarter && quarters[index], size !== undefined && halves[index]];
    const fits = (one: Drawing | NotDrawn | undefined | false): one is Drawing =>
      Boolean(one) && isDrawn(one as Drawing | NotDrawn) && (one as Drawing).scale <= smallestScale;
    return smaller.find(fits) ?? large;
  });
}

/** Cutting layouts of a booth; the tables of the cutting list hold their figures. */
export function cuttingDrawings(
  { spec, result }: ReportInput,
  booth: string,
): { readonly sheets: readonly Block[]; readonly lengths: readonly Block[] } {
  const all = drawnForPaper({ spec, result, booth }).filter(isDrawn);
  const blocksOf = (wanted: DrawingKind) =>
    all
      .filter(({ kind }) => kind === wanted)
      .map(({ svg, title, scale }): Block => ({ kind: 'drawing', svg, caption: `${title}, 1 : ${scale}` }));
  return { sheets: blocksOf('sheet'), lengths: blocksOf('lengths') };
}

function drawingBlocks(all: readonly (Drawing | NotDrawn)[], figures: Figures): Block[] {
  const missing = all.flatMap((one) => (isDrawn(one) ? [] : [`${one.title}: not drawn, ${one.why}`]));
  return blocks(
    ...all.filter(isDrawn).map((one) => withTable(figures, one.svg, one.title, tableOf(one), 'drawing')),
    list(missing),
  );
}

function tableOf({ table: { caption, columns, rows } }: Drawing) {
  return table(caption, columns.map(columnOf(rows)), rows);
}

/** A column of nothing but figures stands at the right. */
function columnOf(rows: readonly (readonly string[])[]) {
  return (head: string, index: number): Column =>
    index > 0 && rows.every((row) => /^[\d.–-]*( mm| kg| m²)?$/.test(row[index] ?? '')) ? figureColumn(head) : { head };
}
