import { co2Concentration, co2TimeTo, steadyCo2 } from '@boothwright/acoustics';
import type { AirCurve } from '../result/result-document.js';

interface Balance {
  readonly start: number;
  readonly supply: number;
  readonly generation: number;
  readonly flow: number;
  readonly volume: number;
}

/** Points on a curve, at most; enough for a chart. */
const curvePoints = 120;
/** Times beyond a day are "never" in a booth. */
const longestMinutes = 24 * 60;
/** ppm of air that is nothing but CO2: the balance of a crowd in a closed box ends there. */
const pureGas = 1e6;

/** CO2 over the session, and the minutes until each of four levels is passed. */
export function co2Curve(balance: Balance, fan: AirCurve['fan'], sessionMinutes: number): AirCurve {
  const step = Math.max(1, Math.ceil(sessionMinutes / curvePoints));
  const minutes = Array.from({ length: Math.floor(sessionMinutes / step) + 1 }, (_, index) => index * step);
  if ((minutes.at(-1) ?? 0) < sessionMinutes) minutes.push(sessionMinutes);
  const full = co2TimeTo({ ...balance, threshold: pureGas }) ?? Number.POSITIVE_INFINITY;
  const at = (minute: number) =>
    minute * 60 < full ? co2Concentration({ ...balance, seconds: minute * 60 }) : pureGas;
  return {
    fan,
    flowM3PerS: balance.flow,
    minutes,
    ppm: minutes.map(at),
    steadyPpm: steadyCo2(balance),
    endPpm: at(sessionMinutes),
    minutesTo: {
      '1000': minutesTo(balance, 1000),
      '1500': minutesTo(balance, 1500),
      '2500': minutesTo(balance, 2500),
      '5000': minutesTo(balance, 5000),
    },
  };
}

function minutesTo(balance: Balance, threshold: number): number | null {
  const seconds = co2TimeTo({ ...balance, threshold });
  if (seconds === null) return null;
  const minutes = seconds / 60;
  return minutes <= longestMinutes ? minutes : null;
}
