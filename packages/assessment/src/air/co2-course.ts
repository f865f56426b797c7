import {
  co2Concentration,
  co2TimeTo,
  type LinearStep,
  linearStep,
  steadyCo2,
  steadyZoneConcentrations,
  takeStep,
  zoneConcentrations,
} from '@boothwright/acoustics';
import type { AirSupply } from './air-supply.js';

/** CO2 in the booth against time at one setting of the fans. */
export interface Co2Course {
  /** ppm after some seconds */
  readonly at: (seconds: number) => number;
  /** ppm in the long run; null where it never settles */
  readonly steady: number | null;
  /** s until the level is reached; null where it is not within a day */
  readonly timeTo: (ppm: number) => number | null;
  /** ppm in the room around the booth after some seconds; null where it is not followed */
  readonly roomAt: ((seconds: number) => number) | null;
}

/** Times beyond a day are "never" in a booth. */
const longestSeconds = 24 * 3600;
/** ppm of air that is nothing but CO2: the balance of a crowd in a closed box ends there. */
const pureGas = 1e6;

/** Booth alone, with supply air that stays as it is: the exact solution of one well-mixed space. */
export function fixedSupplyCourse(balance: {
  readonly start: number;
  readonly supply: number;
  readonly generation: number;
  readonly flow: number;
  readonly volume: number;
}): Co2Course {
  const full = co2TimeTo({ ...balance, threshold: pureGas }) ?? Number.POSITIVE_INFINITY;
  return {
    at: (seconds) => (seconds < full ? co2Concentration({ ...balance, seconds }) : pureGas),
    steady: steadyCo2(balance),
    timeTo: (threshold) => {
      const seconds = co2TimeTo({ ...balance, threshold });
      return seconds !== null && seconds <= longestSeconds ? seconds : null;
    },
    roomAt: null,
  };
}

/**
 * Booth and the room that it draws on, both well mixed. The exact solution of the two balances in steps of a minute and,
 * within a minute, of a second; between seconds the state is held.
 */
export function twoZoneCourse(supply: AirSupply & { readonly model: 'two-zones' }): Co2Course {
  const { zones, load, start } = supply;
  const stepOf = (seconds: number) => linearStep(2, 1000, (state) => zoneConcentrations(zones, load, state, seconds));
  const [minute, second] = [stepOf(60), stepOf(1)];
  const byMinute: (readonly number[])[] = [[start, start]];
  const stateAt = (seconds: number): readonly number[] => {
    const whole = Math.floor(seconds / 60 + 1e-9);
    while (byMinute.length <= whole) byMinute.push(takeStep(minute, byMinute[byMinute.length - 1] as number[]));
    return repeated(second, byMinute[whole] as readonly number[], Math.round(seconds - 60 * whole));
  };
  const boothAt = (seconds: number) => Math.min(pureGas, stateAt(seconds)[1] as number);
  return {
    at: boothAt,
    steady: steadyZoneConcentrations(zones, load)?.[1] ?? null,
    roomAt: (seconds) => Math.min(pureGas, stateAt(seconds)[0] as number),
    timeTo: (ppm) => {
      if (start >= ppm) return 0;
      for (let from = 0; from < longestSeconds; from += 60) {
        if (boothAt(from + 60) < ppm) continue;
        for (let at = from + 1; at <= from + 60; at++) {
          const [before, after] = [boothAt(at - 1), boothAt(at)];
          if (after >= ppm) return at - 1 + (after === before ? 1 : (ppm - before) / (after - before));
        }
      }
      return null;
    },
  };
}

function repeated(step: LinearStep, state: readonly number[], times: number): readonly number[] {
  let reached = state;
  for (let count = 0; count < times; count++) reached = takeStep(step, reached);
  return reached;
}
