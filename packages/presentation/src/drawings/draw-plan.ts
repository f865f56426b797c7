import type { BoothResult } from '@boothwright/assessment';
import type { Booth } from '@boothwright/language';
import { type DisplayUnits, lengthText } from '../numbers/length-text.js';
import { type BoothFrame, boothFrame, isDrawable } from './booth-frame.js';
import { doorWords, equipmentName, liningWords, type PartWords, placeWords, ventWords } from './booth-words.js';
import { type Callout, callouts, clearOf } from './callouts.js';
import type { Canvas } from './canvas.js';
import type { Drawing, DrawingOptions, NotDrawn } from './drawing.js';
import { finishDrawing } from './finish-drawing.js';
import { type PlacedMark, placedMarks, placedOpenings } from './placed-openings.js';
import { planDimensions } from './plan-dimensions.js';
import { boxOf, type PlanPlace, planOpenings, planPlace, planWalls, wallFaces } from './plan-parts.js';
import { textWidth } from './text-box.js';

/** The booth from above, cut through its walls: openings, the way of the air, linings, microphone, mouth and equipment. */
export function drawPlan(booth: Booth, result: BoothResult | undefined, options: DrawingOptions): Drawing | NotDrawn {
  const id = `plan-${booth.name}`;
  const title = `Plan of ${booth.name}${booth.title === undefined ? '' : `, ${booth.title}`}`;
  const frame = boothFrame(booth, result);
  if (!isDrawable(frame)) return { kind: 'plan', id, title, why: `the sizes of ${booth.name} are not known` };
  const { units } = options;
  const size = (of: readonly number[]) => of.map((metres) => lengthText(metres, units)).join(' × ');
  const parts = partsOf(booth, options);
  return finishDrawing(
    {
      kind: 'plan',
      id,
      title,
      description: `Seen from above, the front below. Outside ${size(frame.outside)}, inside ${size(frame.inside)}. ${parts.map(({ what, size: own, place }) => `${what}: ${[own, place].filter(Boolean).join(', ')}`).join('. ')}.`,
      notes: planNotes(booth, frame),
      table: {
        caption: title,
        columns: ['what', 'size', 'where'],
        rows: [
          ['outside', size(frame.outside), 'width × depth × height'],
          ['inside', size(frame.inside), 'width × depth × height, before any lining'],
          ...wallFaces
            .filter((face) => !frame.open[face])
            .map((face) => [
              `${face} wall ${booth.faces[face]?.assembly.name ?? ''}`,
              lengthText(frame.thickness[face], units),
              face,
            ]),
          ...parts.map(({ what, size: own, place }) => [what, own, place]),
        ],
      },
      extent: { width: frame.outside[0], height: frame.outside[1] },
      draw: (canvas) => draw(canvas, booth, frame, options),
    },
    options,
  );
}

export function planNotes(booth: Booth, frame: BoothFrame): string[] {
  const walls = wallFaces.flatMap((face) => placedOpenings(booth, face, frame));
  const marks = [...booth.vents, ...booth.holes].length;
  const slits = booth.slits.map(({ name, face }) => `${name} (${face})`);
  return [
    ...new Set(walls.flatMap(({ assumed }) => assumed.filter((text) => !text.includes('(sill)')))),
    ...(marks > 0
      ? ['Where on its face a vent or hole sits is not in the text: it is drawn where the face is free.']
      : []),
    ...(booth.vents.some(({ bends, chambers, maze }) => bends.value > 0 || chambers.length > 0 || maze !== undefined)
      ? ['A vent is drawn through its wall only: its bends and boxes have no place in the text.']
      : []),
    ...(slits.length > 0 ? [`Slits are not drawn: ${slits.join(', ')}.`] : []),
  ];
}

function partsOf(booth: Booth, { units }: DrawingOptions): PartWords[] {
  const { microphone, mouth } = booth;
  return [
    ...[...booth.doors, ...booth.windows].map(({ name }) => doorWords(booth, name, units)),
    ...booth.vents.map((vent) => ventWords(vent, units)),
    ...booth.holes.map((hole) => ({
      what: `hole ${hole.name}`,
      size: lengthText(hole.diameter.value, units),
      place: hole.face,
    })),
    ...booth.slits.map((slit) => ({
      what: `slit ${slit.name}`,
      size: `${lengthText(slit.length.value, units)} × ${lengthText(slit.gap.value, units)}`,
      place: slit.face,
    })),
    ...booth.linings.map((lining) => liningWords(lining, units)),
    ...(microphone === undefined
      ? []
      : [{ what: 'microphone', size: '', place: placeWords(microphone.position, units) }]),
    ...(mouth === undefined ? [] : [{ what: 'mouth', size: '', place: placeWords(mouth, units) }]),
    ...booth.equipment.map((thing) => ({
      what: equipmentName(thing),
      size:
        thing.size === undefined
          ? ''
          : [thing.size.width, thing.size.depth, thing.size.height]
              .map(({ value }) => lengthText(value, units))
              .join(' × '),
      place: placeWords(thing.position, units),
    })),
  ];
}

function draw(canvas: Canvas, booth: Booth, frame: BoothFrame, { units }: DrawingOptions): void {
  const place = planPlace(canvas, frame);
  planWalls(canvas, booth, frame, place);
  const named = [...insideThings(canvas, booth, frame, place, units), ...openingNames(booth, frame, place, units)];
  planOpenings(canvas, booth, frame, place);
  named.push(...liningNames(booth, frame, place, units));
  const right = planDimensions(canvas, booth, frame, units);
  const leaders = callouts(canvas, named, canvas.bounds().right + 18);
  const y = clearOf(leaders, right + 10, textWidth('right', true), -canvas.px(frame.outside[1]), 0);
  if (y !== undefined) canvas.text('right', right + 10, y, { turned: true, bold: true });
}

function insideThings(
  canvas: Canvas,
  booth: Booth,
  frame: BoothFrame,
  place: PlanPlace,
  units: DisplayUnits,
): Callout[] {
  const [ox, oy] = frame.origin;
  const { accent, paper } = canvas.inks;
  const named: Callout[] = [];
  const up = (z: number) => `${lengthText(z, units)} up`;
  for (const thing of booth.equipment) {
    const [x, y] = [ox + thing.position.x.value, oy + thing.position.y.value];
    const wide = (thing.size?.width.value ?? 0.06) / 2;
    const deep = Math.max(thing.size?.depth.value ?? 0.06, 0.01) / 2;
    const box = boxOf(place.at(x - wide, y - deep), place.at(x + wide, y + deep));
    canvas.rectangle(box, { fill: paper, 'stroke-width': 1.2 });
    named.push({
      text: `${equipmentName(thing)}, ${up(thing.position.z.value)}`,
      x: (box.left + box.right) / 2 + 4,
      y: (box.top + box.bottom) / 2,
      range: thing.nameRange,
    });
  }
  if (booth.mouth !== undefined) {
    const [x, y] = place.at(ox + booth.mouth.x.value, oy + booth.mouth.y.value);
    canvas.rectangle({ left: x - 5, right: x + 5, top: y - 3, bottom: y + 3 }, { fill: paper, stroke: accent, rx: 3 });
    named.push({ text: `mouth, ${up(booth.mouth.z.value)}`, x, y, range: booth.mouth.range });
  }
  if (booth.microphone !== undefined) {
    const { position } = booth.microphone;
    const [x, y] = place.at(ox + position.x.value, oy + position.y.value);
    const arm = 8;
    canvas.line(
      [
        [x - arm, y],
        [x + arm, y],
      ],
      { stroke: accent },
    );
    canvas.line(
      [
        [x, y - arm],
        [x, y + arm],
      ],
      { stroke: accent },
    );
    canvas.rectangle(
      { left: x - 4.5, right: x + 4.5, top: y - 4.5, bottom: y + 4.5 },
      { stroke: accent, 'stroke-width': 1.6, rx: 4.5 },
    );
    named.push({ text: `microphone, ${up(position.z.value)}`, x, y, range: booth.microphone.range });
  }
  return named;
}

function openingNames(booth: Booth, frame: BoothFrame, place: PlanPlace, units: DisplayUnits): Callout[] {
  const words: Readonly<Record<PlacedMark['air'], string>> = {
    in: ', air in',
    out: ', air out',
    both: ', air',
    none: '',
  };
  return wallFaces.flatMap((face) => {
    const deep = -frame.thickness[face] / 2;
    const openings = placedOpenings(booth, face, frame).map(({ kind, name, range, from, to, base, top }) => {
      const [x, y] = place.wall(face, (from + to) / 2, deep);
      return {
        text: `${kind} ${name}, ${lengthText(to - from, units)} × ${lengthText(top - base, units)}`,
        x,
        y,
        range,
      };
    });
    const marks = placedMarks(booth, face, frame).map(({ kind, name, range, along, air }) => {
      const [x, y] = place.wall(face, along, deep);
      return { text: `${kind} ${name}${words[air]}`, x, y, range };
    });
    return [...openings, ...marks];
  });
}

function liningNames(booth: Booth, frame: BoothFrame, place: PlanPlace, units: DisplayUnits): Callout[] {
  return booth.linings.flatMap((lining) => {
    const face = (['right', 'back', 'left', 'front'] as const).find((one) => lining.faces.includes(one));
    if (face === undefined) return [];
    const deep = -frame.thickness[face] - frame.lining[face] / 2;
    const length = face === 'front' || face === 'back' ? frame.outside[0] : frame.outside[1];
    const [x, y] = place.wall(face, length * (face === 'back' ? 0.3 : 0.7), deep);
    return [{ text: `lining ${liningWords(lining, units).size}`, x, y, range: lining.range }];
  });
}
