import { limits } from '../limits.js';
import type { Booth, Door, Size2, Window } from '../model/booth-spec.js';
import type { Problem } from '../model/problem.js';
import { asWritten, inUnitsOf } from './as-written.js';
import { type CheckContext, complain, warn } from './context.js';
import { fitAboveEachOther } from './geometry/above-each-other.js';
import { checkAirPaths } from './geometry/check-air-paths.js';
import { checkEquipmentFits } from './geometry/check-equipment-fits.js';
import { checkGrilles } from './geometry/check-grilles.js';
import { checkMouthDistance } from './geometry/check-mouth-distance.js';
import { checkPanels } from './geometry/check-panels.js';
import { checkPlaces } from './geometry/check-places.js';
import { checkSideBySide } from './geometry/check-side-by-side.js';
import { checkSills } from './geometry/check-sills.js';
import { faceSize } from './geometry/face-size.js';
import { SLACK } from './geometry/slack.js';
import { millimetres } from './millimetres.js';
import { assemblyThickness } from './read-assembly.js';

/** What sizes say about each other: nothing here knows acoustics. */
export function checkGeometry(ctx: CheckContext, booth: Booth): void {
  if (checkInsideFits(ctx, booth)) checkLayersFit(ctx, booth);
  for (const opening of [...booth.doors, ...booth.windows]) checkOpeningFits(ctx, booth, opening);
  checkSills(ctx, booth);
  checkHolesFit(ctx, booth);
  checkLiningsFit(ctx, booth);
  checkOverlaps(ctx, booth);
  checkSideBySide(ctx, booth);
  checkGrilles(ctx, booth);
  checkPlaces(ctx, booth);
  checkEquipmentFits(ctx, booth);
  checkMouthDistance(ctx, booth);
  checkPanels(ctx, booth);
  checkAirPaths(ctx, booth);
}

const AXES = [
  { axis: 'width', first: 'left', second: 'right', outer: 'the left and right walls' },
  { axis: 'depth', first: 'front', second: 'back', outer: 'the front and back walls' },
  { axis: 'height', first: 'roof', second: 'floor', outer: 'roof and floor' },
] as const;

function checkInsideFits(ctx: CheckContext, { outside, inside }: Booth): boolean {
  if (!outside) return false;
  let fits = true;
  for (const { axis } of AXES) {
    if (inside[axis].value < outside[axis].value) continue;
    fits = false;
    complain(
      ctx,
      'inside-not-smaller',
      inside[axis].range,
      `the inside ${axis} of ${millimetres(inside[axis].value)} is not smaller than the outside ${axis} of ${millimetres(outside[axis].value)}`,
      {
        related: [{ range: outside[axis].range, message: 'the outside stands here' }],
      },
    );
  }
  return fits;
}

function checkLayersFit(ctx: CheckContext, booth: Booth): void {
  const { outside, inside, faces } = booth;
  if (!outside) return;
  for (const { axis, first, second, outer } of AXES) {
    const one = faces[first];
    const two = faces[second];
    const a = one && assemblyThickness(one.assembly.layers);
    const b = two && assemblyThickness(two.assembly.layers);
    if (!one || !two || a === undefined || b === undefined) continue;
    const space = outside[axis].value - inside[axis].value;
    const difference = a + b - space;
    if (Math.abs(difference) <= SLACK + 1e-9) continue;
    const related: NonNullable<Problem['related']>[number][] = [
      { range: inside[axis].range, message: `the inside ${axis} is ${millimetres(inside[axis].value)}` },
      { range: one.assembly.nameRange, message: `\`${one.assembly.name}\` is ${millimetres(a)} thick` },
    ];
    if (two.assembly.name !== one.assembly.name)
      related.push({ range: two.assembly.nameRange, message: `\`${two.assembly.name}\` is ${millimetres(b)} thick` });
    const message = `outside less inside leaves ${millimetres(space)} of ${axis} for ${outer}, but their layers add up to ${millimetres(a)} + ${millimetres(b)} = ${millimetres(a + b)}: ${millimetres(Math.abs(difference))} ${difference > 0 ? 'too little' : 'too much'}`;
    warn(ctx, 'dimensions-disagree', outside[axis].range, message, {
      hint: {
        hint: `an outside ${axis} of ${asWritten(inside[axis].value + a + b, outside[axis])} fits the layers`,
        instead: [inUnitsOf(inside[axis].value + a + b, outside[axis])],
      },
      related,
    });
  }
}

function checkOpeningFits(ctx: CheckContext, booth: Booth, opening: Door | Window): void {
  const face = faceSize(booth, opening.face);
  for (const axis of ['width', 'height'] as const) {
    const own = (opening.size as Size2)[axis];
    if (own.value <= face[axis].value) continue;
    complain(
      ctx,
      'opening-larger-than-face',
      own.range,
      `\`${opening.name}\` is ${millimetres(own.value)} in ${axis}, its face \`${opening.face}\` only ${millimetres(face[axis].value)}`,
      {
        related: [{ range: face[axis].range, message: 'the face is this large' }],
      },
    );
    return;
  }
  if (!fitsInside(ctx, booth, opening)) return;
  const end = opening.offset && opening.offset.value + opening.size.width.value;
  if (opening.offset && end !== undefined && end > face.width.value + SLACK)
    complain(
      ctx,
      'opening-beyond-face',
      opening.offset.range,
      `\`${opening.name}\` ends ${millimetres(end)} from the left edge, its face \`${opening.face}\` is ${millimetres(face.width.value)} wide`,
      {
        related: [{ range: face.width.range, message: 'the face is this wide' }],
      },
    );
}

/** What is seen from inside must hold the opening too: a leaf is no use where a wall, the roof or the floor stands. */
function fitsInside(ctx: CheckContext, booth: Booth, opening: Door | Window): boolean {
  const clear = faceSize({ ...booth, outside: undefined }, opening.face);
  for (const axis of ['width', 'height'] as const) {
    const own = opening.size[axis];
    if (own.value <= clear[axis].value + SLACK) continue;
    complain(
      ctx,
      'opening-larger-than-inside',
      own.range,
      `\`${opening.name}\` is ${millimetres(own.value)} in ${axis}, but inside \`${opening.face}\` is only ${millimetres(clear[axis].value)}`,
      {
        hint: {
          hint: `a ${axis} of at most ${millimetres(clear[axis].value)} fits`,
          instead: [millimetres(clear[axis].value)],
        },
        related: [{ range: clear[axis].range, message: 'the inside is this large' }],
      },
    );
    return false;
  }
  return true;
}

function checkHolesFit(ctx: CheckContext, booth: Booth): void {
  const openings = [
    ...booth.vents.map(({ name, face, duct }) => ({
      name,
      face,
      size: duct.kind === 'round' ? duct.diameter : duct.width.value > duct.height.value ? duct.width : duct.height,
    })),
    ...booth.holes.map(({ name, face, diameter }) => ({ name, face, size: diameter })),
  ];
  for (const { name, face, size } of openings) {
    const { width, height } = faceSize(booth, face);
    const smaller = width.value < height.value ? width : height;
    if (size.value <= smaller.value) continue;
    complain(
      ctx,
      'opening-larger-than-face',
      size.range,
      `\`${name}\` is ${millimetres(size.value)} wide, its face \`${face}\` only ${millimetres(smaller.value)}`,
      {
        related: [{ range: smaller.range, message: 'the face is this large' }],
      },
    );
  }
}

/** What is left between the linings of opposite faces. */
function checkLiningsFit(ctx: CheckContext, booth: Booth): void {
  for (const { axis, first, second } of AXES) {
    const linings = booth.linings.filter(({ faces }) => faces.includes(first) || faces.includes(second));
    const sum = linings.reduce(
      (total, { faces, layers }) =>
        total + (assemblyThickness(layers) ?? 0) * (Number(faces.includes(first)) + Number(faces.includes(second))),
      0,
    );
    const size = booth.inside[axis];
    if (linings.length === 0 || sum < size.value) continue;
    complain(
      ctx,
      'lining-fills-booth',
      linings[0]!.range,
      `linings of ${millimetres(sum)} leave nothing of the inside ${axis} of ${millimetres(size.value)}`,
      {
        related: [{ range: size.range, message: 'the inside is this large' }],
      },
    );
    return;
  }
}

/** Openings of a face whose places are given meet where they do along it and cannot stand above each other. */
function checkOverlaps(ctx: CheckContext, booth: Booth): void {
  const placed = [
    ...booth.doors.map((opening) => ({ opening, isDoor: true })),
    ...booth.windows.map((opening) => ({ opening, isDoor: false })),
  ].filter(({ opening }) => opening.offset);
  placed.forEach((b, i) => {
    for (const a of placed.slice(0, i)) {
      if (ctx.problems.length > limits.problems) return;
      if (a.opening.face !== b.opening.face) continue;
      const [from, to] = [
        Math.max(a.opening.offset!.value, b.opening.offset!.value),
        Math.min(end(a.opening), end(b.opening)),
      ];
      if (to - from <= SLACK || fitAboveEachOther(a, b, faceSize(booth, b.opening.face).height.value)) continue;
      complain(
        ctx,
        'openings-overlap',
        b.opening.nameRange,
        `\`${b.opening.name}\` overlaps \`${a.opening.name}\` by ${millimetres(to - from)} on \`${b.opening.face}\``,
        {
          related: [{ range: a.opening.nameRange, message: `\`${a.opening.name}\` is here` }],
        },
      );
    }
  });
}

function end(opening: Door | Window): number {
  return opening.offset!.value + opening.size.width.value;
}
