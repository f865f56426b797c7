import type { Session, Site } from '../model/booth-spec.js';
import { type CheckContext, warn } from './context.js';
import { mayHaveRoom } from './may-have-room.js';

/** Whether people in the room around the booth can have a say in its air, which nothing else would tell. */
export function checkRoomAir(ctx: CheckContext, site: Site | undefined, session: Session | undefined): void {
  if (site?.occupants.origin.kind !== 'given' || site.occupants.value === 0) return;
  const { range } = site.occupants;
  const idle = (hint: string, related?: { range: typeof range; message: string }): void =>
    warn(ctx, 'fact-without-effect', range, '`occupants` changes nothing here', {
      hint,
      ...(related ? { related: [related] } : {}),
    });
  if (session?.supplyAir.origin.kind === 'given')
    idle('leave `supply-air` out to have the air of the room worked out from them', {
      range: session.supplyAir.range,
      message: 'what the vents draw is stated here',
    });
  else if (!site.freshAir)
    idle(
      'add `fresh-air`, the outdoor air that the room gets: without it nothing says how fast their breath is carried off',
    );
  else if (!site.room && !mayHaveRoom(ctx))
    idle('add `room WIDTH x DEPTH x HEIGHT`: their breath fills the air of the room');
}
