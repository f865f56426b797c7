import type { BoothResult } from '../result/result-document.js';
import { type Figure, figure } from './figure.js';

const litres = 1000;

/** Figures of a booth that stand beside those of another text. */
export function boothFigures(booth: BoothResult): Figure[] {
  const { noise, ratings, voiceOutside, voiceAt, geometry } = booth;
  return [
    figure('rating', 'STC of the whole booth', ratings.stc, 'points', 'more'),
    figure('rating', 'Rw of the whole booth', ratings.rw, 'dB', 'more'),
    figure('noise', 'room tone', noise.total.dBA?.value ?? null, 'dBA', 'less'),
    figure('noise', 'room tone, unweighted', noise.total.dBZ?.value ?? null, 'dB', 'less'),
    figure('noise', 'room tone, criterion', noise.total.nc?.value ?? null, 'NC', 'less'),
    figure('recording', 'room tone in the file', noise.roomTone?.dBFS.value ?? null, 'dBFS', 'less'),
    ...noise.bySource.map(({ name, inside }) =>
      figure('noise', `${name} inside`, inside.dBA?.value ?? null, 'dBA', 'less'),
    ),
    figure('noise', 'fans inside', noise.fan?.dBA?.value ?? null, 'dBA', 'less'),
    figure('noise', 'air in ducts', noise.airInDucts?.dBA?.value ?? null, 'dBA', 'less'),
    figure('noise', 'air at openings', noise.airAtOpenings?.dBA?.value ?? null, 'dBA', 'less'),
    ...(noise.hours?.requirements ?? []).map(({ text, hoursMet }) =>
      figure('noise', `hours of the day that meet ${text.replace(/^require /, '')}`, hoursMet, 'h', 'more'),
    ),
    figure('voice', 'voice outside', voiceOutside?.dBA?.value ?? null, 'dBA', 'less'),
    ...voiceAt.flatMap(({ place, session }) =>
      place === null ? [] : [figure('voice', `voice in ${place}`, session?.dBA?.value ?? null, 'dBA', 'less')],
    ),
    figure('decay', 'decay, mean of 500 Hz to 2 kHz', booth.roomSound?.mid?.seconds ?? null, 's', 'less'),
    figure('decay', 'decay at 125 Hz', decayAt(booth, 125), 's', 'less'),
    figure('decay', 'decay at 250 Hz', decayAt(booth, 250), 's', 'less'),
    ...airFigures(booth),
    ...buildFigures(booth),
    figure('size', 'volume', geometry.volumeM3, 'm3'),
    figure('size', 'outside width', geometry.outsideM[0] * 1000, 'mm'),
    figure('size', 'outside depth', geometry.outsideM[1] * 1000, 'mm'),
    figure('size', 'outside height', geometry.outsideM[2] * 1000, 'mm'),
  ];
}

function airFigures({ air, ventilation }: BoothResult): Figure[] {
  const judged = air?.fanOn ?? air?.fanOff;
  const flow = air?.fanOn?.flowM3PerS ?? ventilation.high?.flowM3PerS ?? null;
  const rise = air?.heat?.bySetting.find(({ setting }) => setting === air.judged)?.endRiseK ?? null;
  return [
    figure('air', 'CO2 at the end of the session', judged?.endPpm ?? null, 'ppm', 'less'),
    figure('air', 'CO2 at the end, fans off', air?.fanOff.endPpm ?? null, 'ppm', 'less'),
    figure('air', 'minutes to 1000 ppm, fans off', air?.fanOff.minutesTo['1000'] ?? null, 'min', 'more'),
    figure('air', 'fresh air', flow === null ? null : flow * litres, 'L/s', 'more'),
    figure('warmth', 'warmer at the end of the session', rise, 'K', 'less'),
  ];
}

function buildFigures({ build, moving }: BoothResult): Figure[] {
  const heaviest = Math.max(...build.panels.map(({ massKg }) => massKg), Number.NEGATIVE_INFINITY);
  return [
    figure('mass', 'mass', build.massKg, 'kg', 'less'),
    figure('mass', 'mass in use', build.loadedMassKg, 'kg', 'less'),
    figure('mass', 'floor load', build.floorLoadPa / 1000, 'kPa', 'less'),
    figure('mass', 'heaviest panel', Number.isFinite(heaviest) ? heaviest : null, 'kg', 'less'),
    figure('mass', 'panels', build.panels.length > 0 ? build.panels.length : null, 'count'),
    figure('mass', 'problems of moving in and putting up', moving?.problems.length ?? null, 'count', 'less'),
    figure('cost', 'cost with reserve', costToBuild(build.cost), build.cost?.currency ?? '', 'less'),
  ];
}

/** With what the list buys too few of; null where something that is needed has no price. */
function costToBuild(cost: BoothResult['build']['cost']): number | null {
  if (cost === null || cost.unpriced.length > 0) return null;
  return cost.amount > 0 ? (cost.withReserve * (cost.amount + cost.missing)) / cost.amount : cost.withReserve;
}

/** s; null where nothing can be said. */
function decayAt({ roomSound }: BoothResult, hz: number): number | null {
  return roomSound?.decay.find((band) => band.hz === hz)?.seconds ?? null;
}
