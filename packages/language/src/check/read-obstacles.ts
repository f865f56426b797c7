import type { Size3 } from '../model/booth-spec.js';
import type { Obstacle } from '../model/surroundings.js';
import { type BlockReader, readBlock } from './block-reader.js';
import { warn } from './context.js';
import { eachNamed } from './each-named.js';
import { mayHaveRoom } from './may-have-room.js';
import { millimetres } from './millimetres.js';
import { readSize3 } from './read-size.js';
import { numberIn } from './read-value.js';

const AXES = [
  ['x', 'width', 'from the left wall', 'wide'],
  ['y', 'depth', 'from the front wall', 'deep'],
  ['z', 'height', 'above the floor', 'high'],
] as const;

/** What may be left over when places and sizes were rounded, in metres. */
const SLACK = 0.001;

export function readObstacles(outer: BlockReader, room: Size3 | undefined): Obstacle[] {
  const { ctx } = outer;
  return eachNamed(outer, ['obstacle'], (statement, named) => {
    const reader = readBlock(ctx, statement, `obstacle ${named.name}`);
    const size = readSize3(reader, 'size');
    const [x, y, z] = AXES.map(([axis, , words]) =>
      numberIn(ctx, statement, axis, {
        dimension: 'length',
        noun: `the place ${words}`,
        label: `${reader.label}: ${axis}`,
        fact: 'obstacle',
        usual: { min: -1, max: 100, text: 'rooms are smaller than 100 m' },
      }),
    );
    if (!x || !y || !z || !size) return undefined;
    const obstacle = { ...named, position: { x: x.sourced, y: y.sourced, z: z.sourced }, size };
    if (room) checkWithin(outer, obstacle, room);
    else if (!mayHaveRoom(ctx))
      warn(
        ctx,
        'room-missing',
        named.nameRange,
        `\`${named.name}\` has a place in the room, and the room has no size`,
        {
          hint: 'add `room WIDTH x DEPTH x HEIGHT` to `site`',
        },
      );
    return obstacle;
  });
}

function checkWithin({ ctx }: BlockReader, obstacle: Obstacle, room: Size3): void {
  for (const [axis, side, , word] of AXES) {
    const from = obstacle.position[axis];
    const to = from.value + obstacle.size[side].value;
    if (from.value >= -SLACK && to <= room[side].value + SLACK) continue;
    warn(
      ctx,
      'obstacle-outside',
      from.range,
      `\`${obstacle.name}\` would reach out of the room: from ${millimetres(from.value)} to ${millimetres(to)} in a room ${millimetres(room[side].value)} ${word}`,
      {
        hint: 'its place is that of its left front lower corner, in the axes of the room',
        related: [{ range: room[side].range, message: 'the room is this large' }],
      },
    );
    return;
  }
}
