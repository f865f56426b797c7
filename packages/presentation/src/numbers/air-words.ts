import type { AirCurve, AirResult, TakesResult, VentilationResult } from '@boothwright/assessment';
import { formatFigures, formatNumber } from './format-number.js';
import { formatQuantity } from './format-quantity.js';
import { isImperial } from './shown.js';
import { airFlowText, imperialPer } from './trade-units.js';

/** Minutes as a performer reads them: `12 min`, `3 h 20 min`, `never within 24 h`. */
export function minutesText(minutes: number | null): string {
  if (minutes === null) return 'not within 24 h';
  if (minutes <= 0) return 'from the start';
  if (minutes < 10) return `${formatNumber(minutes, 1)} min`;
  if (minutes < 120) return `${formatNumber(minutes)} min`;
  const whole = Math.round(minutes);
  return `${Math.floor(whole / 60)} h ${whole % 60} min`;
}

/** One sentence per state of the fan: the level at the end of the session and the minutes to the levels that matter. */
export function airSentences(air: AirResult): readonly string[] {
  const curves = [air.fanHigh, air.fanLow, air.fanOff].filter((curve): curve is AirCurve => curve !== null);
  return curves.map((curve) => {
    const flow = curve.flowM3PerS > 0 ? ` (${airFlowText(curve.flowM3PerS)})` : '';
    return (
      `fan ${curve.setting}${flow}: ${formatQuantity(curve.endPpm, 'ppm')} after ${formatNumber(air.sessionMinutes)} min, ` +
      `1000 ppm ${timeTo(curve, '1000')}, 1500 ppm ${timeTo(curve, '1500')}, 2500 ppm ${timeTo(curve, '2500')}`
    );
  });
}

function timeTo(curve: AirCurve, level: '1000' | '1500' | '2500'): string {
  const minutes = curve.minutesTo[level];
  return minutes === null || minutes <= 0 ? minutesText(minutes) : `after ${minutesText(minutes)}`;
}

/** `12.0 L/s`, and `0.06 L/s` where one decimal would say nothing. */
export function flowText(flow: number): string {
  if (isImperial()) return airFlowText(flow);
  const litres = flow * 1000;
  return `${litres > 0 && litres < 1 ? formatFigures(litres, 2) : formatNumber(litres, 1)} L/s`;
}

/** `3.5 Pa`; less than a tenth is no pressure that a fan has trouble with. */
export function pressureText(pascals: number): string {
  if (isImperial()) {
    const inches = pascals * imperialPer.inchesOfWater;
    return inches > 0 && inches < 0.001 ? '< 0.001 in of water' : `${formatFigures(inches, 2)} in of water`;
  }
  return pascals > 0 && pascals < 0.1 ? '< 0.1 Pa' : `${formatFigures(pascals, 2)} Pa`;
}

/** What the fan must give, or gives, at the setting that is judged; why nothing is known otherwise. */
export function pressureSentence(ventilation: VentilationResult, judged: AirResult['judged']): string | undefined {
  const flow = judged === 'low' ? ventilation.low : ventilation.high;
  if (flow === null) return undefined;
  const notes = flow.notes.length === 0 ? '' : ` (${flow.notes.join('; ')})`;
  if (flow.flowM3PerS === null || flow.neededPa === null) return `Flow not known${notes}`;
  const at = flowText(flow.flowM3PerS);
  const pressure = pressureText(flow.neededPa);
  return flow.givenPa === null
    ? `Your fan must give ${pressure} at ${at}: ask for its curve${notes}`
    : `By its curve the fan moves ${at} against ${pressure}${notes}`;
}

/** Takes and rests: the peak that comes back, and how long a take may be. */
export function takesSentences(takes: TakesResult | null): string | undefined {
  if (takes === null) return undefined;
  const cycle = `${formatNumber(takes.takeMinutes)} min takes, fan ${takes.fanInTake}, ${formatNumber(takes.restMinutes)} min rests with the door open`;
  const peak =
    takes.repeatingPeakPpm === null
      ? `CO₂ climbs on from take to take, ${formatQuantity(takes.lastPeakPpm, 'ppm')} at the end of the last`
      : `CO₂ comes back to ${formatQuantity(takes.repeatingPeakPpm, 'ppm')} at the end of each`;
  const longest = takes.longestTakeMinutes['1000'];
  const most =
    longest === 0
      ? 'no take keeps 1000 ppm'
      : longest >= 240
        ? 'takes of hours keep 1000 ppm'
        : `takes up to ${longest} min keep 1000 ppm`;
  return `${cycle}: ${peak}; ${most}`;
}
