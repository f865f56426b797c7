import type { BoothResult } from '@boothwright/assessment';
import type { Booth, Site } from '@boothwright/language';
import { lengthText } from '../numbers/length-text.js';
import { type BoothFrame, boothFrame, isDrawable } from './booth-frame.js';
import { type Callout, callouts } from './callouts.js';
import type { Canvas } from './canvas.js';
import { acrossPoints, dimensionSides, upPoints } from './dimension-sides.js';
import type { Drawing, DrawingOptions, NotDrawn } from './drawing.js';
import { finishDrawing } from './finish-drawing.js';
import { placedOpenings } from './placed-openings.js';
import { boxOf, planOpenings, planPlace, planWalls, wallFaces } from './plan-parts.js';

/** The booth in its room from above, with what stands in the way and how far its door opens. */
export function drawRoomPlan(
  booth: Booth,
  site: Site | undefined,
  result: BoothResult | undefined,
  options: DrawingOptions,
): Drawing | NotDrawn {
  const id = `room-${booth.name}`;
  const title = `${booth.name} in its room`;
  const frame = boothFrame(booth, result);
  const room = site?.room;
  const refused = (why: string): NotDrawn => ({ kind: 'room', id, title, why });
  if (room === undefined) return refused('the text does not say how large the room is (room of site)');
  if (booth.standsAt === undefined) return refused(`the text does not say where ${booth.name} stands (stands at)`);
  const roomSize = [room.width.value, room.depth.value, room.height.value];
  if (!isDrawable(frame) || roomSize.some((m) => !(m > 0 && m < 100))) return refused('the sizes are not known');
  const { units } = options;
  const words = (sizes: readonly number[]) => sizes.map((m) => lengthText(m, units)).join(' × ');
  const sides = result?.moving?.sides ?? [];
  const doors = result?.moving?.doors ?? [];
  const rows = [
    ['room', words(roomSize), site?.title ?? ''],
    [
      `booth ${booth.name}`,
      words(frame.outside),
      `${lengthText(booth.standsAt.x.value, units)} from the left, ${lengthText(booth.standsAt.y.value, units)} from the front wall of the room`,
    ],
    ...sides.map(({ side, freeM, obstacle }) => [
      `free at the ${side}`,
      lengthText(freeM, units),
      obstacle === null ? 'to the wall' : `to ${obstacle}`,
    ]),
    ...(site?.obstacles ?? []).map(({ name, size, position }) => [
      `obstacle ${name}`,
      words([size.width.value, size.depth.value, size.height.value]),
      `${lengthText(position.x.value, units)} from the left, ${lengthText(position.y.value, units)} from the front, ${lengthText(position.z.value, units)} up`,
    ]),
    ...doors.map(({ door, opensDeg, freeM, text }) => [
      `door ${door} opens`,
      opensDeg === null ? '–' : `${Math.floor(opensDeg)}°`,
      freeM === null ? text : `${lengthText(freeM, units)} free before it`,
    ]),
  ];
  const { joists } = site as Site;
  return finishDrawing(
    {
      kind: 'room',
      id,
      title,
      description: `Seen from above, the front below. ${rows.map((row) => row.filter(Boolean).join(', ')).join('. ')}.`,
      notes: [
        'The way into the room has no place in the text and is not drawn.',
        ...(joists === undefined ? [] : [`The joists of the floor run along the ${joists.value} of the room.`]),
      ],
      table: { caption: title, columns: ['what', 'size', 'where'], rows },
      extent: { width: room.width.value, height: room.depth.value },
      draw: (canvas) => {
        draw(canvas, booth, site as Site, frame, new Map(doors.map((one) => [one.door, one.opensDeg ?? 90])), options);
      },
    },
    options,
  );
}

function draw(
  canvas: Canvas,
  booth: Booth,
  site: Site,
  frame: BoothFrame,
  opensDeg: ReadonlyMap<string, number>,
  { units }: DrawingOptions,
): void {
  const { room, obstacles } = site;
  if (room === undefined || booth.standsAt === undefined) return;
  const [wide, deep] = [room.width.value, room.depth.value];
  const [x0, y0] = [booth.standsAt.x.value, booth.standsAt.y.value];
  const place = planPlace(canvas, frame, x0, y0);
  const spot = (x: number, y: number) => [canvas.px(x), -canvas.px(y)] as const;
  const walls = boxOf(spot(0, 0), spot(wide, deep));
  canvas.rectangle(walls, { 'stroke-width': 2.6 });
  const named: Callout[] = [];
  for (const { name, nameRange, position, size } of obstacles) {
    const [x, y] = [position.x.value, position.y.value];
    const box = boxOf(spot(x, y), spot(x + size.width.value, y + size.depth.value));
    const hangs = position.z.value > 0;
    canvas.rectangle(box, hangs ? { 'stroke-dasharray': '5 3' } : {});
    if (!hangs) canvas.line([spot(x, y), spot(x + size.width.value, y + size.depth.value)], { 'stroke-width': 0.6 });
    const up = hangs ? `, ${lengthText(position.z.value, units)} up` : '';
    named.push({ text: `${name}${up}`, x: box.right - 6, y: box.top + 5, range: nameRange });
  }
  planWalls(canvas, booth, { ...frame, lining: none }, place);
  planOpenings(canvas, booth, { ...frame, lining: none }, place, opensDeg);
  const [boothX, boothY] = place.at(frame.outside[0] / 2, frame.outside[1] / 2);
  named.push({ text: `booth ${booth.name}`, x: boothX, y: boothY, range: booth.nameRange });
  for (const face of wallFaces) {
    for (const opening of placedOpenings(booth, face, frame)) {
      const [x, y] = place.wall(face, (opening.from + opening.to) / 2, -frame.thickness[face] / 2);
      const degrees = opensDeg.get(opening.name);
      const opens = opening.kind === 'door' && degrees !== undefined ? `, opens ${Math.floor(degrees)}°` : '';
      named.push({ text: `${opening.kind} ${opening.name}${opens}`, x, y, range: opening.range });
    }
  }
  dimensionSides(
    canvas,
    {
      left: [
        [0, y0, y0 + frame.outside[1], deep],
        [0, deep],
      ].map((all) => upPoints(canvas, all)),
      below: [
        [0, x0, x0 + frame.outside[0], wide],
        [0, wide],
      ].map((all) => acrossPoints(canvas, all)),
    },
    walls,
    units,
  );
  callouts(canvas, named, Math.max(canvas.bounds().right, walls.right) + 6);
}

const none = { front: 0, back: 0, left: 0, right: 0, roof: 0, floor: 0 } as const;
