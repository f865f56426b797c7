import type { Booth, Session } from '@boothwright/language';
import { ductArea } from '../booth/openings/duct-area.js';
import { ventsWithFan } from '../noise/fan.js';
import type { AirResult } from '../result/result-document.js';
import { co2Curve } from './co2-curve.js';

/**
 * Fresh air and CO2 with the fan on and off. Fans on the way in and on the way out move the same air one after the
 * other, so the strongest fan sets the flow. Without a fan nothing moves the air: leaks are not counted, and a vent
 * alone, without a fan, is taken to pass none.
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
  const flow = fanFlow(booth);
  return {
    volumeM3: volume,
    people,
    generationM3PerS: balance.generation,
    supplyPpm: balance.supply,
    sessionMinutes,
    fanOn: flow > 0 ? co2Curve({ ...balance, flow }, 'on', sessionMinutes) : null,
    fanOff: co2Curve({ ...balance, flow: 0 }, 'off', sessionMinutes),
    ductSpeeds: flow > 0 ? booth.vents.map((vent) => ({ vent: vent.name, mPerS: flow / ductArea(vent) })) : [],
  };
}

/** m3/s; zero without a fan. */
export function fanFlow(booth: Booth): number {
  return Math.max(0, ...ventsWithFan(booth).map((vent) => vent.fan.flow.value));
}
