import type { Booth, Fan, Vent } from '@boothwright/language';
import { faceArea, insideSize, openFaces } from '../booth/geometry.js';
import { ductArea } from '../booth/openings/duct-area.js';
import type { VentDirection } from './vent-resistance.js';

/** How the air takes its way. */
export type AirWay =
  /** No fan moves air. */
  | 'no-fan'
  /** A fan, and no other opening through which as much air could go: its stated flow cannot pass. */
  | 'no-way-out'
  /** The fans move air, the vents without a fan let it go the other way. */
  | 'vents'
  /** Fans and no vent without one: the same air passes them one after the other. */
  | 'series'
  /** Fans that blow the same way, and gaps or holes wide enough for their air. */
  | 'gaps';

export interface VentFlow {
  readonly vent: Vent;
  /** m3/s */
  readonly flow: number;
  readonly direction: VentDirection;
}

export interface FreshAir {
  readonly way: AirWay;
  /** m3/s that passes the booth; zero where nothing can be said to pass */
  readonly flow: number;
  /** What goes through every duct, in the order of the text; empty where nothing passes. */
  readonly byVent: readonly VentFlow[];
}

/**
 * Gaps and holes count as a way for the air of a fan from this share of the clear area of its duct on. Evidence: our own;
 * at half the area the air moves twice as fast as in the duct and needs four times its pressure, which a small fan with a
 * lined duct before it hardly has left.
 */
export const comparableShare = 0.5;

type VentWithFan = Vent & { readonly fan: Fan };

/**
 * Flow of fresh air by continuity: what one opening brings another takes away. `flowOf` is what a fan moves, m3/s.
 *
 * With vents without a fan: the larger of what the fans blow in and of what they draw out passes the booth, each duct with a
 * fan carries its own flow, the others share the difference by clear area. Without such vents fans that blow both ways stand in
 * series and the weaker side sets the flow; fans that all blow one way need gaps or holes of at least `comparableShare` of
 * the narrowest of their ducts. A fan whose direction is not stated blows the way of the stated ones beside vents without a
 * fan, the other way where there are none, and into the booth where nothing is stated at all.
 * Units: m3/s, m2. Source: conservation of volume (common practice). Valid: for flows as installed; pressures are those of
 * `boothFlow`.
 */
export function freshAir(booth: Booth, flowOf: (fan: Fan) => number = statedFlow): FreshAir {
  const fans = booth.vents.filter((vent): vent is VentWithFan => vent.fan !== undefined && flowOf(vent.fan) > 0);
  if (fans.length === 0) return { way: 'no-fan', flow: 0, byVent: [] };
  const passive = booth.vents.filter((vent) => !fans.some((fan) => fan === vent));
  const directions = fanDirections(fans, passive.length > 0);
  const blown = (direction: VentDirection) =>
    sum(fans.map((vent) => (directions.get(vent) === direction ? flowOf(vent.fan) : 0)));
  const [supplied, drawn] = [blown('in'), blown('out')];
  if (passive.length > 0) {
    const area = sum(passive.map(ductArea));
    const rest = Math.abs(supplied - drawn);
    const restDirection: VentDirection = supplied >= drawn ? 'out' : 'in';
    const byVent = booth.vents.map((vent): VentFlow => {
      const fan = fans.find((candidate) => candidate === vent);
      return fan === undefined
        ? { vent, flow: (rest * ductArea(vent)) / area, direction: restDirection }
        : { vent, flow: flowOf(fan.fan), direction: directions.get(fan) as VentDirection };
    });
    return { way: 'vents', flow: Math.max(supplied, drawn), byVent };
  }
  if (supplied > 0 && drawn > 0) {
    const flow = Math.min(supplied, drawn);
    const byVent = fans.map((vent): VentFlow => {
      const direction = directions.get(vent) as VentDirection;
      return { vent, flow: (flow * flowOf(vent.fan)) / (direction === 'in' ? supplied : drawn), direction };
    });
    return { way: 'series', flow, byVent };
  }
  const byVent = fans.map(
    (vent): VentFlow => ({ vent, flow: flowOf(vent.fan), direction: directions.get(vent) as VentDirection }),
  );
  const needed = comparableShare * Math.min(...fans.map(ductArea));
  return gapArea(booth) >= needed
    ? { way: 'gaps', flow: supplied + drawn, byVent }
    : { way: 'no-way-out', flow: 0, byVent: [] };
}

function statedFlow(fan: Fan): number {
  return fan.flow.value;
}

function fanDirections(fans: readonly VentWithFan[], besidePassive: boolean): Map<Vent, VentDirection> {
  const stated = fans.flatMap((vent) => (vent.fan.direction === undefined ? [] : [vent.fan.direction.value]));
  const first: VentDirection = stated[0] === undefined || stated[0] === 'supply' ? 'in' : 'out';
  const other: VentDirection = first === 'in' ? 'out' : 'in';
  let unstated = 0;
  return new Map(
    fans.map((vent) => {
      const direction = vent.fan.direction?.value;
      if (direction !== undefined) return [vent, direction === 'supply' ? 'in' : 'out'];
      unstated += 1;
      if (besidePassive) return [vent, first];
      // Nothing stated: the first blows in and the rest draws out, so that the same air passes all of them.
      return [vent, stated.length === 0 && unstated === 1 ? first : other];
    }),
  );
}

/** Clear area of holes, slits, door gaps and faces without a build-up, m2; a missing floor is the floor of the room. */
export function gapArea(booth: Booth): number {
  const size = insideSize(booth);
  return (
    sum(booth.holes.map((hole) => (Math.PI / 4) * hole.diameter.value ** 2)) +
    sum(booth.slits.map((slit) => slit.length.value * slit.gap.value)) +
    sum(
      booth.doors.map(({ size: { width, height }, perimeterGap, thresholdGap }) => {
        const around = 2 * height.value + width.value;
        return around * perimeterGap.value + width.value * thresholdGap.value;
      }),
    ) +
    sum(openFaces(booth).map((face) => faceArea(size, face)))
  );
}

function sum(values: readonly number[]): number {
  return values.reduce((total, value) => total + value, 0);
}
