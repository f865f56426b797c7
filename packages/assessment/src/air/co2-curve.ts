import type { AirCurve } from '../result/air-result.js';
import type { Co2Course } from './co2-course.js';

/** Points on a curve, at most; enough for a chart. */
const curvePoints = 120;

/** CO2 over the session, and the minutes until each of four levels is passed. */
export function co2Curve(
  course: Co2Course,
  {
    setting,
    flow,
    sessionMinutes,
  }: {
    readonly setting: AirCurve['setting'];
    readonly flow: number;
    readonly sessionMinutes: number;
  },
): AirCurve {
  const minutes = sessionPoints(sessionMinutes);
  const minutesTo = (ppm: number) => {
    const seconds = course.timeTo(ppm);
    return seconds === null ? null : seconds / 60;
  };
  return {
    fan: setting === 'off' ? 'off' : 'on',
    setting,
    flowM3PerS: flow,
    minutes,
    ppm: minutes.map((minute) => course.at(minute * 60)),
    steadyPpm: course.steady,
    endPpm: course.at(sessionMinutes * 60),
    minutesTo: {
      '1000': minutesTo(1000),
      '1500': minutesTo(1500),
      '2500': minutesTo(2500),
      '5000': minutesTo(5000),
    },
  };
}

/** Whole minutes of a session in even steps, and its end. */
export function sessionPoints(sessionMinutes: number): number[] {
  const step = Math.max(1, Math.ceil(sessionMinutes / curvePoints));
  const minutes = Array.from({ length: Math.floor(sessionMinutes / step) + 1 }, (_, index) => index * step);
  if ((minutes.at(-1) ?? 0) < sessionMinutes) minutes.push(sessionMinutes);
  return minutes;
}
