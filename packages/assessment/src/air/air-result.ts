import type { Air } from '@boothwright/acoustics';
import type { Booth, Session, Site } from '@boothwright/language';
import { ductArea } from '../booth/openings/duct-area.js';
import type { Memo } from '../memo/memo.js';
import type { AirCurve, AirResult, FanSettingOfAir } from '../result/air-result.js';
import { type AirSupply, airSupply, roomVolume } from './air-supply.js';
import { type BoothFlow, boothFlow } from './booth-flow.js';
import { type Co2Course, fixedSupplyCourse, twoZoneCourse } from './co2-course.js';
import { co2Curve } from './co2-curve.js';
import { heatResult, type SettingFlow } from './heat-result.js';
import { moistureResult } from './moisture-result.js';
import { peopleInside } from './people-inside.js';
import { takeCycle } from './take-cycle.js';

/**
 * Air, heat and moisture over the session with the fans off, low and high. What passes is said by `boothFlow`; a fan without a
 * way for its air, or without an operating point, counts as none. With the fan off nothing moves the air: leaks and the draught
 * through vents are not counted.
 */
export function airResult(
  booth: Booth,
  session: Session | undefined,
  site: Site | undefined,
  volume: number,
  air: Air,
  memo: Memo,
): AirResult | null {
  if (session === undefined) return null;
  const people = session.people.value;
  const person = peopleInside(session);
  const generation = people * person.breath;
  const sessionMinutes = session.length.value / 60;
  const standing = { way: 'no-fan', flow: 0, byVent: [] } as const;
  const [low, high] = [boothFlow(booth, 'low', air, memo), boothFlow(booth, 'high', air, memo)];
  const settings = (
    [
      ['off', standing],
      ['low', low],
      ['high', high],
    ] as const
  ).flatMap(([setting, flow]) => {
    if (setting !== 'off' && !(flow.flow !== null && flow.flow > 0)) return [];
    const supply = airSupply(booth, session, site, flow, volume);
    const course =
      supply.model === 'two-zones'
        ? twoZoneCourse(supply)
        : fixedSupplyCourse({ ...supply, generation, flow: flow.flow ?? 0, volume });
    return [{ setting, flow, supply, course }];
  });
  const curve = (setting: FanSettingOfAir): AirCurve | null => {
    const found = settings.find((each) => each.setting === setting);
    return found === undefined ? null : co2Curve(found.course, { setting, flow: found.flow.flow ?? 0, sessionMinutes });
  };
  const judged = session.fanSpeed.value;
  const running = judged === 'off' ? 'high' : judged;
  const [fanOff, fanLow, fanHigh] = [curve('off') as AirCurve, curve('low'), curve('high')];
  const session_ = settings.find((each) => each.setting === running) ?? settings[0];
  const inUse = judged === 'off' ? settings[0] : session_;
  const flows: SettingFlow[] = settings.map(({ setting, flow }) => ({ setting, flow: flow.flow ?? 0 }));
  const heat = heatResult(booth, session, volume, flows, air);
  // A session that leaves the fan off leaves it off in its takes as well.
  const inTake = judged === 'off' || session.cycle?.fan.value === 'off' ? settings[0] : session_;
  const runningFlow: BoothFlow = running === 'low' ? low : high;
  return {
    volumeM3: volume,
    people,
    generationM3PerS: generation,
    breath: {
      perPersonM3PerS: person.breath,
      effort: session.effort.value,
      activityMet: person.activity,
      lowShare: person.range.low,
      highShare: person.range.high,
    },
    supplyPpm: suppliedPpm(inUse?.supply, inUse?.course, session),
    startPpm: inUse?.supply.start ?? session.supplyAir.value,
    sessionMinutes,
    judged,
    fanOn: running === 'low' ? fanLow : fanHigh,
    fanOff,
    fanLow,
    fanHigh,
    ductSpeeds: runningFlow.byVent.map(({ vent, flow }) => ({ vent: vent.name, mPerS: flow / ductArea(vent) })),
    supply: {
      model: inUse?.supply.model ?? 'fixed',
      roomVolumeM3: roomVolume(booth, site),
      roomFreshAirM3PerS: site?.freshAir?.value ?? null,
      roomEndPpm: inUse?.course.roomAt?.(session.length.value) ?? null,
      note: supplyNote(inUse?.supply, booth, session, site),
    },
    takes: inTake === undefined ? null : takeCycle(booth, session, inTake, volume, air.temperature),
    heat: typeof heat === 'string' ? null : heat,
    heatNote: typeof heat === 'string' ? heat : null,
    moisture: moistureResult(
      session,
      site,
      volume,
      flows,
      (setting) =>
        typeof heat === 'string' ? 0 : (heat.bySetting.find((each) => each.setting === setting)?.endRiseK ?? 0),
      air,
    ),
  };
}

function suppliedPpm(supply: AirSupply | undefined, course: Co2Course | undefined, session: Session): number {
  if (supply === undefined) return session.supplyAir.value;
  return supply.model === 'fixed' ? supply.supply : (course?.roomAt?.(session.length.value) ?? supply.start);
}

function supplyNote(supply: AirSupply | undefined, booth: Booth, session: Session, site: Site | undefined): string {
  const elsewhere = booth.vents.some(
    ({ opensTo }) => opensTo.value === 'next-room' || opensTo.value === 'appliance-room',
  );
  const other = elsewhere ? ' Air of another room is taken to be like that of this one.' : '';
  if (supply?.model === 'two-zones') {
    return `The booth draws on the room and gives back to it, so that the room fills up as well.${other}`;
  }
  const stated = session.supplyAir.origin.kind !== 'default';
  const open =
    stated || site === undefined
      ? ''
      : ' Give `fresh-air` and the size of the room, and the air of the room is followed as well.';
  return `The air supplied is taken to stay as it is.${open}${other}`;
}
