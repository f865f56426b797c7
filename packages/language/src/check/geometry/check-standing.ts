import type { Booth, Site } from '../../model/booth-spec.js';
import { type CheckContext, warn } from '../context.js';
import { mayHaveRoom } from '../may-have-room.js';
import { millimetres } from '../millimetres.js';
import { outerSize } from './outer-size.js';
import { SLACK } from './slack.js';

const AXES = [
  { axis: 'x', size: 'width', near: 'left', far: 'right' },
  { axis: 'y', size: 'depth', near: 'front', far: 'back' },
] as const;

/** Whether the booth stands inside its room. How high it is beside the room is judged where it is put up. */
export function checkStanding(ctx: CheckContext, booth: Booth, site: Site | undefined): void {
  const { standsAt } = booth;
  if (!standsAt) return;
  if (!site?.room) {
    if (!mayHaveRoom(ctx))
      warn(ctx, 'room-missing', standsAt.range, '`stands at` is a place in a room, and the spec has no room', {
        hint: site ? 'add `room WIDTH x DEPTH x HEIGHT` to `site`' : 'add `site { room WIDTH x DEPTH x HEIGHT }`',
      });
    return;
  }
  const outer = outerSize(booth);
  for (const { axis, size, near, far } of AXES) {
    const from = standsAt[axis].value;
    const room = site.room[size];
    const beyond = Math.max(-from, from + outer[size] - room.value);
    if (beyond <= SLACK) continue;
    warn(
      ctx,
      'booth-outside-room',
      standsAt[axis].range,
      `\`${booth.name}\` would stand ${millimetres(beyond)} beyond the ${-from >= beyond ? near : far} wall of its room: from ${millimetres(from)} to ${millimetres(from + outer[size])} in a room ${millimetres(room.value)} ${size === 'width' ? 'wide' : 'deep'}`,
      { related: [{ range: room.range, message: 'the room is this large' }] },
    );
  }
}
