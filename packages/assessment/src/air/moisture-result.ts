import {
  type Air,
  airProperties,
  condensationMargin,
  dewPoint,
  relativeHumidityOfVapour,
  vapourDensity,
  vapourOfLatentHeat,
  zoneVapour,
} from '@boothwright/acoustics';
import type { Session, Site } from '@boothwright/language';
import type { MoistureResult } from '../result/air-result.js';
import type { SettingFlow } from './heat-result.js';
import { skinTemperature } from './path-constants.js';
import { peopleInside } from './people-inside.js';

/** Driest and moistest air for which a dew point is told. */
const humidities = { least: 0.001, most: 1 } as const;
/** degC that the formulas hold */
const temperatures = { least: -20, most: 50 } as const;

/**
 * Moisture of the air at the end of the session and the surfaces on which it would condense.
 *
 * Equation: V dv/dt = Q (v_room - v) + G, G from the heat that people give off as moisture; the dew point of v. The booth starts as
 * moist as the room, which stays so. Units: kg/m3, kg/s, degC. Source: `zoneVapour`, `dewPoint`; docs/models/heat-in-the-booth.md.
 * Valid: nothing takes up vapour; linings do, so that the true rise is slower.
 */
export function moistureResult(
  session: Session,
  site: Site | undefined,
  volume: number,
  flows: readonly SettingFlow[],
  riseAt: (setting: SettingFlow['setting']) => number,
  air: Air,
): MoistureResult | null {
  const people = session.people.value;
  if (people <= 0 || !(air.relativeHumidity > 0)) return null;
  const generation = people * vapourOfLatentHeat(peopleInside(session).moistHeat, skinTemperature);
  const room = vapourDensity(air);
  const cold = site?.coldSurface?.value;
  return {
    generationKgPerS: generation,
    bySetting: flows.map(({ setting, flow }) => {
      const zones = { volumes: [volume], between: [[0]], fromOutside: [flow] };
      const vapour = zoneVapour(zones, { outside: room, generation: [generation] }, [room], session.length.value)[0];
      const temperature = held(air.temperature + riseAt(setting), temperatures);
      const humidity = relativeHumidityOfVapour(vapour as number, temperature);
      const inside = airProperties({ temperature, relativeHumidity: held(humidity, humidities) });
      return {
        setting,
        endRelativeHumidity: Math.min(1, humidity),
        endDewPointC: dewPoint(inside),
        coldSurfaceMarginK: cold === undefined ? null : condensationMargin(inside, cold),
      };
    }),
    note: 'Linings and clothes take up moisture, so that the true rise is slower; the air supplied is as moist as the room.',
  };
}

function held(value: number, { least, most }: { readonly least: number; readonly most: number }): number {
  return Math.min(most, Math.max(least, value));
}
