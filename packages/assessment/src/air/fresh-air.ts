import type { Booth, Vent } from '@boothwright/language';
import { faceArea, insideSize, openFaces } from '../booth/geometry.js';
import { ductArea } from '../booth/openings/duct-area.js';
import { ventsWithFan } from '../noise/fan.js';

/** How the air takes its way; every one is an assumption, because the text does not say which way a fan blows. */
export type AirWay =
  /** No fan moves air. */
  | 'no-fan'
  /** A fan, and no other opening through which as much air could go: its stated flow cannot pass. */
  | 'no-way-out'
  /** The fans move air one way, the vents without a fan let it go the other way. */
  | 'vents'
  /** Two or more fans and no vent without one: the same air passes them one after the other. */
  | 'series'
  /** One fan, and gaps or holes wide enough for its air. */
  | 'gaps';

export interface FreshAir {
  readonly way: AirWay;
  /** m3/s that passes the booth; zero where nothing can be said to pass */
  readonly flow: number;
  /** m3/s through every duct, in the order of the text; empty where nothing passes. */
  readonly byVent: readonly { readonly vent: Vent; readonly flow: number }[];
}

/**
 * Gaps and holes count as a way for the air of a fan from this share of the clear area of its duct on. Evidence: our own;
 * at half the area the air moves twice as fast as in the duct and needs four times its pressure, which a small fan with a
 * lined duct before it hardly has left.
 */
export const comparableShare = 0.5;

/**
 * Flow of fresh air by continuity: what one opening brings another takes away.
 *
 * With vents without a fan: the total is the sum of the fans, each duct with a fan carries its own flow, the others share
 * the total by clear area. Without such vents several fans stand in series and the weakest sets the flow; a single fan
 * needs gaps or holes of at least `comparableShare` of its duct.
 * Units: m3/s, m2. Source: conservation of volume (common practice). Valid: for stated flows as installed; pressure losses
 * are not computed, and two fans that blow against a passive vent in series move less than their sum.
 */
export function freshAir(booth: Booth): FreshAir {
  const fans = ventsWithFan(booth).filter((vent) => vent.fan.flow.value > 0);
  if (fans.length === 0) return { way: 'no-fan', flow: 0, byVent: [] };
  const passive = booth.vents.filter((vent) => !fans.some((fan) => fan === vent));
  const flows = fans.map((vent) => vent.fan.flow.value);
  if (passive.length > 0) {
    const flow = flows.reduce((sum, each) => sum + each, 0);
    const area = passive.reduce((sum, vent) => sum + ductArea(vent), 0);
    const byVent = booth.vents.map((vent) => {
      const fan = fans.find((candidate) => candidate === vent);
      return { vent, flow: fan === undefined ? (flow * ductArea(vent)) / area : fan.fan.flow.value };
    });
    return { way: 'vents', flow, byVent };
  }
  const flow = Math.min(...flows);
  const byVent = fans.map((vent) => ({ vent, flow }));
  if (fans.length > 1) return { way: 'series', flow, byVent };
  const needed = comparableShare * Math.min(...fans.map(ductArea));
  return gapArea(booth) >= needed ? { way: 'gaps', flow, byVent } : { way: 'no-way-out', flow: 0, byVent: [] };
}

/** Clear area of holes, slits, door gaps and faces without a build-up, m2; a missing floor is the floor of the room. */
function gapArea(booth: Booth): number {
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
