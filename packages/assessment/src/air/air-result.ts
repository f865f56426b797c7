import type { Booth, Session } from '@boothwright/language';
import { ductArea } from '../booth/openings/duct-area.js';
import { ventsWithFan } from '../noise/fan.js';
import type { AirResult } from '../result/result-document.js';
import { co2Curve } from './co2-curve.js';
import { freshAir } from './fresh-air.js';

/**
 * Fresh air and CO2 with the fan on and off. What passes with the fan on is said by `freshAir`; a fan without a way out
 * for its air counts as none. With the fan off nothing moves the air: leaks and the draught through vents are not counted.
 */
export function airResult(booth: Booth, session: Session | undefined, volume: number): AirResult | null {
  if (session === undefined) return null;
  const people = session.people.value;
  const balance = {
    start: session.supplyAir.value,
    supply: session.supplyAir.value,
    generation: people * session.co2Rate.value,
    volume,
  };
  const sessionMinutes = session.length.value / 60;
  const { flow, byVent } = freshAir(booth);
  return {
    volumeM3: volume,
    people,
    generationM3PerS: balance.generation,
    supplyPpm: balance.supply,
    sessionMinutes,
    fanOn: flow > 0 ? co2Curve({ ...balance, flow }, 'on', sessionMinutes) : null,
    fanOff: co2Curve({ ...balance, flow: 0 }, 'off', sessionMinutes),
    ductSpeeds: byVent.map(({ vent, flow: own }) => ({ vent: vent.name, mPerS: own / ductArea(vent) })),
  };
}

/** Stated flow of the strongest fan, m3/s, whether its air has a way out or not; zero without a fan. */
export function fanFlow(booth: Booth): number {
  return Math.max(0, ...ventsWithFan(booth).map((vent) => vent.fan.flow.value));
}
