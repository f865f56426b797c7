import {
  type Air,
  airHeatCapacity,
  linearStep,
  steadyZoneTemperatures,
  takeStep,
  zoneTemperatures,
} from '@boothwright/acoustics';
import type { Booth, Session } from '@boothwright/language';
import { openFaces } from '../booth/geometry.js';
import type { FanSettingOfAir, HeatResult } from '../result/air-result.js';
import { decimals } from '../text/decimals.js';
import { boothConductance } from './booth-conductance.js';
import { sessionPoints } from './co2-curve.js';
import { skinTemperature } from './path-constants.js';
import { peopleInside } from './people-inside.js';

/** Share of the rise by which it may be off either way. Evidence: our own; people give off a third more or less, walls a fifth. */
export const temperatureRiseShare = 0.3;

export interface SettingFlow {
  readonly setting: FanSettingOfAir;
  /** m3/s */
  readonly flow: number;
}

/**
 * How much warmer than the room the booth gets, at each setting of the fans.
 *
 * Equation: C_a dT/dt = P - (c Q + H_d) T - H_1 (T - T_b), C_b dT_b/dt = H_1 (T - T_b) - H_2 T_b, temperatures above the room; a
 * steady rise of P/(UA + c Q). P the dry heat of people and equipment. Units: W, W/K, J/K, K.
 * People give off no dry heat to air as warm as their skin: their part ends there, the rest is the equipment's.
 * Source: heat balance of well-mixed air and one node of boards (common practice); docs/models/heat-in-the-booth.md.
 * Valid: a room that keeps its temperature; the air supplied is as warm as it. Null with a reason where a face is open.
 */
export function heatResult(
  booth: Booth,
  session: Session,
  volume: number,
  flows: readonly SettingFlow[],
  air: Air,
): HeatResult | string {
  const open = openFaces(booth);
  if (open.length > 0) {
    return `The ${open.join(' and the ')} of the booth ${open.length > 1 ? 'have' : 'has'} no build-up, so how warm it gets cannot be said.`;
  }
  const shell = boothConductance(booth);
  const people = session.people.value * peopleInside(session).dryHeat;
  const equipment =
    session.heat.value + booth.equipment.reduce((sum, { heat }) => sum + Math.max(0, heat?.value ?? 0), 0);
  const gains = people + equipment;
  // What a rise may be: air at the skin's temperature, or what the equipment alone would do.
  const held = (rise: number): number => {
    const most = Math.max(skinTemperature - air.temperature, gains > 0 ? (rise * equipment) / gains : 0);
    return rise <= most || people <= 0 ? rise : Math.max(0, most);
  };
  const heldOrNone = (rise: number | undefined) => (rise === undefined ? null : held(rise));
  const airCapacity = airHeatCapacity(air) * volume;
  const hasBoards = shell.boardCapacity > 0 && shell.fromBoards > 0;
  const sessionMinutes = session.length.value / 60;
  const minutes = sessionPoints(sessionMinutes);
  const count = hasBoards ? 2 : 1;
  const bySetting = flows.map(({ setting, flow }): HeatResult['bySetting'][number] => {
    const zones = {
      volumes: hasBoards ? [volume, 1] : [volume],
      between: hasBoards
        ? [
            [0, 0],
            [0, 0],
          ]
        : [[0]],
      fromOutside: hasBoards ? [flow, 0] : [flow],
      heatCapacities: hasBoards ? [airCapacity, shell.boardCapacity] : [airCapacity],
      conductances: hasBoards
        ? [
            [0, shell.toBoards],
            [shell.toBoards, 0],
          ]
        : [[0]],
      toOutside: hasBoards ? [shell.direct, shell.fromBoards] : [shell.total],
    };
    // Counted from the room, so that its temperature does not matter.
    const load = { outside: 0, gains: hasBoards ? [gains, 0] : [gains] };
    const advance = (seconds: number) => (state: readonly number[]) =>
      zoneTemperatures(zones, load, state, seconds, air);
    const stepMinutes = minutes.length > 1 ? (minutes[1] as number) - (minutes[0] as number) : sessionMinutes;
    const step = linearStep(count, 1, advance(60 * stepMinutes));
    const cold = Array.from({ length: count }, () => 0);
    let state = cold;
    const riseK = minutes.map((minute, index) => {
      if (index === 0) return 0;
      const before = minutes[index - 1] as number;
      state = minute - before === stepMinutes ? takeStep(step, state) : advance(60 * (minute - before))(state);
      return held(state[0] as number);
    });
    return {
      setting,
      endRiseK: held(advance(60 * sessionMinutes)(cold)[0] as number),
      steadyRiseK: heldOrNone(steadyZoneTemperatures(zones, load, air)?.[0]),
      timeConstantMinutes: slowConstant(shell, airCapacity, airHeatCapacity(air) * flow, hasBoards),
      minutes,
      riseK,
    };
  });
  return {
    gainsW: gains,
    peopleW: people,
    equipmentW: equipment,
    conductanceWPerK: shell.total,
    airCapacityJPerK: airCapacity,
    boardCapacityJPerK: shell.boardCapacity,
    bySetting,
    note: `Dry heat only, ${decimals(people, 0)} W of people and ${decimals(equipment, 0)} W of lamps and equipment: what leaves as moisture warms nothing and is not in it. Of the walls the innermost boards store heat, linings and furniture none; the room keeps its temperature; the air supplied is as warm as the room, also from outdoors.${bySetting.some(({ endRiseK }) => people > 0 && endRiseK >= skinTemperature - air.temperature) ? ` Held at ${skinTemperature} °C, the temperature of skin, where people warm the air no further.` : ''}`,
  };
}

/** Slower of the two times with which air and boards settle, min; null where nothing carries heat away. */
function slowConstant(
  shell: ReturnType<typeof boothConductance>,
  airCapacity: number,
  ventilation: number,
  hasBoards: boolean,
): number | null {
  if (!hasBoards) {
    const leaving = shell.total + ventilation;
    return leaving > 0 ? airCapacity / leaving / 60 : null;
  }
  const a = (ventilation + shell.direct + shell.toBoards) / airCapacity;
  const d = (shell.toBoards + shell.fromBoards) / shell.boardCapacity;
  const coupled = shell.toBoards ** 2 / (airCapacity * shell.boardCapacity);
  const root = Math.sqrt(((a - d) / 2) ** 2 + coupled);
  // The product of both rates over the faster one, so that no difference of large numbers is left.
  const slow = (a * d - coupled) / ((a + d) / 2 + root);
  return slow > 0 ? 1 / slow / 60 : null;
}
