import type { AirZones, ZoneLoad } from '@boothwright/acoustics';
import type { Booth, Session, Site } from '@boothwright/language';
import { outsideSize, volumeOf } from '../booth/geometry.js';
import type { BoothFlow } from './booth-flow.js';
import { peopleInside } from './people-inside.js';

/** What air the booth gets at one setting of the fans. */
export type AirSupply =
  | {
      readonly model: 'fixed';
      /** ppm when the door closes, and of the air supplied */
      readonly start: number;
      readonly supply: number;
    }
  | {
      readonly model: 'two-zones';
      readonly start: number;
      /** The room, then the booth. */
      readonly zones: AirZones;
      readonly load: ZoneLoad;
    };

/** Shares of the flow that come from and go to the room; the rest is outdoors. */
interface Shares {
  readonly fromRoom: number;
  readonly fromOutdoors: number;
  readonly toRoom: number;
}

/**
 * Nobody starts in a room with more, ppm: it would be aired first. The common workplace limit for eight hours (from memory). Without it little
 * `fresh-air` and several `occupants` would start the session in air that nobody can breathe.
 */
const unbearable = 5000;

/** Least share of the volume of the room that is taken to be left around the booth. */
const leastRoomShare = 0.05;

/**
 * Where the air of the booth comes from.
 *
 * Rule: vents that open outdoors bring outdoor air, all others and gaps the air of the room around the booth. That air stays at
 * `supply-air` unless the text leaves `supply-air` open and gives the `fresh-air` and the size of the room: then the room fills up
 * with what the booth returns to it and with the breath of its `occupants`, and is renewed by its fresh air, or by what an
 * exhaust outdoors draws through it where that is more. Room and booth start at the larger of `supply-air` and of what the
 * occupants keep in the room alone, up to 5000 ppm.
 * Units: m3, m3/s, ppm. Source: mass balance of well-mixed spaces (common practice); docs/models/co2-in-the-booth.md.
 */
export function airSupply(
  booth: Booth,
  session: Session,
  site: Site | undefined,
  flow: Pick<BoothFlow, 'flow' | 'byVent' | 'way'>,
  volume: number,
): AirSupply {
  const through = flow.flow ?? 0;
  const { fromRoom, fromOutdoors, toRoom } = sharesOf(flow);
  const stated = session.supplyAir.value;
  const outdoor = site?.outdoorAir.value ?? stated;
  const room = roomVolume(booth, site);
  const fresh = site?.freshAir?.value;
  const fixed = { model: 'fixed' as const, start: stated, supply: fromRoom * stated + fromOutdoors * outdoor };
  if (site === undefined || room === null || fresh === undefined || fresh <= 0) return fixed;
  if (session.supplyAir.origin.kind !== 'default') return fixed;
  const { breath, breathInRoom } = peopleInside(session);
  const [inRoom, inBooth] = [site.occupants.value * breathInRoom, session.people.value * breath];
  // The exact solution holds no air that is more than all CO2; such a crowd is left to the closed formula.
  if (1e6 * Math.max(inRoom / room, inBooth / volume) * 600 > 5e5) return fixed;
  const drawn = through * fromRoom;
  const returned = through * toRoom;
  return {
    model: 'two-zones',
    start: Math.max(stated, Math.min(unbearable, outdoor + (1e6 * inRoom) / fresh)),
    zones: {
      volumes: [room, volume],
      between: [
        [0, drawn],
        [returned, 0],
      ],
      fromOutside: [Math.max(fresh, drawn - returned), through * fromOutdoors],
    },
    load: { outside: outdoor, generation: [inRoom, inBooth] },
  };
}

function sharesOf({ byVent, way }: Pick<BoothFlow, 'byVent' | 'way'>): Shares {
  const total = (direction: 'in' | 'out') =>
    byVent.reduce((sum, entry) => sum + (entry.direction === direction ? entry.flow : 0), 0);
  const outdoors = (direction: 'in' | 'out') =>
    byVent.reduce(
      (sum, { vent, flow, direction: own }) =>
        sum + (own === direction && vent.opensTo.value === 'outdoors' ? flow : 0),
      0,
    );
  const [supplied, drawn] = [total('in'), total('out')];
  // Gaps carry what one side lacks, and they open to the room.
  const largest = Math.max(supplied, drawn);
  if (largest <= 0 || way === 'no-fan') return { fromRoom: 1, fromOutdoors: 0, toRoom: 1 };
  const fromOutdoors = outdoors('in') / largest;
  return { fromRoom: 1 - fromOutdoors, fromOutdoors, toRoom: 1 - outdoors('out') / largest };
}

/** Air of the room around the booth, m3; null where its size is not given. */
export function roomVolume(booth: Booth, site: Site | undefined): number | null {
  if (site?.room === undefined) return null;
  const { width, depth, height } = site.room;
  const whole = width.value * depth.value * height.value;
  return whole > 0 ? Math.max(leastRoomShare * whole, whole - volumeOf(outsideSize(booth))) : null;
}
