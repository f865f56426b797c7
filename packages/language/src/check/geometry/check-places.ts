import type { Booth, Face } from '../../model/booth-spec.js';
import type { Place } from '../../model/inside-the-booth.js';
import { type CheckContext, complain, warn } from '../context.js';
import { millimetres } from '../millimetres.js';
import { assemblyThickness } from '../read-assembly.js';

interface Placed {
  readonly id: 'mic' | 'mouth' | 'equipment';
  readonly what: string;
  readonly at: Pick<Place, 'x' | 'y' | 'z'>;
}

const AXES = [
  { axis: 'x', size: 'width', word: 'wide', near: 'left', far: 'right' },
  { axis: 'y', size: 'depth', word: 'deep', near: 'front', far: 'back' },
  { axis: 'z', size: 'height', word: 'high', near: 'floor', far: 'roof' },
] as const;

/** The microphone, the mouth and the middle of every thing stand in the booth, and not in what lines its faces. */
export function checkPlaces(ctx: CheckContext, booth: Booth): void {
  const { microphone, mouth, equipment } = booth;
  const places: Placed[] = [
    ...(microphone ? [{ id: 'mic' as const, what: 'the microphone', at: microphone.position }] : []),
    ...(mouth ? [{ id: 'mouth' as const, what: 'the mouth', at: mouth }] : []),
    ...equipment.map(({ name, position }) => ({ id: 'equipment' as const, what: `\`${name}\``, at: position })),
  ];
  for (const place of places) checkPlace(ctx, booth, place);
}

function checkPlace(ctx: CheckContext, { inside, linings }: Booth, { id, what, at }: Placed): void {
  for (const { axis, size, word, near, far } of AXES) {
    const value = at[axis];
    const room = inside[size];
    if (value.value <= 0 || value.value >= room.value) {
      complain(
        ctx,
        `${id}-outside`,
        value.range,
        `${what} would be outside the booth: ${millimetres(value.value)} in a room ${millimetres(room.value)} ${word}`,
        { related: [{ range: room.range, message: 'the inside is this large' }] },
      );
      continue;
    }
    for (const [face, distance] of [
      [near, value.value],
      [far, room.value - value.value],
    ] as const) {
      const lining = covering(linings, face);
      if (lining.depth <= distance) continue;
      warn(
        ctx,
        `${id}-in-lining`,
        value.range,
        `${what} would be inside the lining: ${millimetres(distance)} from \`${face}\`, whose lining is ${millimetres(lining.depth)} thick`,
        {
          hint: 'places are measured from the wall behind the lining',
          related: lining.ranges.map((range) => ({ range, message: 'the lining stands here' })),
        },
      );
    }
  }
}

/** What lines all of a face; where only a part of it is lined, the place may be beside that part. */
function covering(
  linings: Booth['linings'],
  face: Face,
): { readonly depth: number; readonly ranges: readonly Booth['linings'][number]['range'][] } {
  const whole = linings.filter(({ faces, cover }) => faces.includes(face) && cover.value >= 1);
  const depth = whole.reduce((sum, { layers }) => sum + (assemblyThickness(layers) ?? 0), 0);
  return { depth, ranges: whole.map(({ range }) => range) };
}
