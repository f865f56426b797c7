import type { AirCurve, AirResult, BoothResult, VentAirResult } from '@boothwright/assessment';
import { flowText, minutesText, pressureSentence, pressureText, takesSentences } from '../../numbers/air-words.js';
import { formatFigures, formatNumber } from '../../numbers/format-number.js';
import { formatQuantity } from '../../numbers/format-quantity.js';
import { printable } from '../printable.js';
import { joinLines, section } from '../section.js';
import type { TextStyle } from '../text-style.js';
import { textTable } from '../text-table.js';
import { wrapText } from '../wrap-text.js';

const right = 'right' as const;

/** How long the air lasts, how warm it gets, how fast and with what pressure it moves, fan off, low and high. */
export function airSection(booth: BoothResult, suffix: string, style: TextStyle): string | undefined {
  const { air, ventilation } = booth;
  if (!air) return undefined;
  const wrapped = (text: string | undefined | null | false) =>
    text ? wrapText(printable(text), style.width, '  ', '    ') : undefined;
  const moved = ventilation.vents.some(({ flowHighM3PerS }) => (flowHighM3PerS ?? 0) > 0);
  const full = style.detail === 'full';
  return section(
    `Air${suffix}`,
    joinLines(
      settingsTable(air),
      moved && ventsTable(ventilation.vents, air.judged),
      wrapped(pressureSentence(ventilation, air.judged)),
      wrapped(takesSentences(air.takes)),
      wrapped(dampSentence(air)),
      wrapped(baseSentence(air)),
      full && wrapped(air.supply.note),
      wrapped(air.heatNote),
      full && wrapped(heatSentence(air)),
      full && wrapped(ventilation.wayNote),
    ),
    style,
  );
}

function settingsTable(air: AirResult): string {
  const curves = [air.fanOff, air.fanLow, air.fanHigh].filter((curve): curve is AirCurve => curve !== null);
  const rise = (setting: AirCurve['setting']) => air.heat?.bySetting.find((each) => each.setting === setting)?.endRiseK;
  return textTable(
    [
      { head: 'CO₂, fan' },
      { head: 'flow', align: right },
      { head: `after ${formatNumber(air.sessionMinutes)} min`, align: right },
      { head: 'to 1000 ppm', align: right },
      { head: 'to 2500 ppm', align: right },
      { head: 'warmer by', align: right },
    ],
    curves.map((curve) => {
      const warmer = rise(curve.setting);
      return [
        `${curve.setting}${curve.setting === air.judged && curves.length > 1 ? ' (session)' : ''}`,
        flowText(curve.flowM3PerS),
        formatQuantity(curve.endPpm, 'ppm'),
        shortTime(curve.minutesTo['1000']),
        shortTime(curve.minutesTo['2500']),
        warmer === undefined ? '' : `${formatNumber(warmer, 1)} K`,
      ];
    }),
  );
}

/** One line a vent: which way, where its air is fastest, what it takes, and what of a sound at 500 Hz gets through. */
function ventsTable(vents: readonly VentAirResult[], judged: AirResult['judged']): string {
  const low = judged === 'low';
  return textTable(
    [
      { head: 'vent' },
      { head: 'air' },
      { head: 'flow', align: right },
      { head: 'fastest', align: right },
      { head: 'in the' },
      { head: 'takes', align: right },
      { head: 'keeps off at 500 Hz', align: right },
    ],
    vents.map((vent) => {
      const flow = low ? vent.flowLowM3PerS : vent.flowHighM3PerS;
      const speeds = vent.sections.map(({ part, lowMPerS, highMPerS }) => ({
        part,
        speed: (low ? lowMPerS : highMPerS) ?? 0,
      }));
      const fastest = speeds.toSorted((a, b) => b.speed - a.speed)[0];
      const pressure = vent.pressure.reduce((sum, { pa }) => sum + pa, 0);
      return [
        printable(vent.name),
        vent.direction === null ? '' : vent.directionStated ? vent.direction : `${vent.direction}?`,
        flow === null ? '' : flowText(flow),
        flow === null || fastest === undefined ? '' : `${formatFigures(fastest.speed, 2)} m/s`,
        flow === null ? '' : (fastest?.part ?? ''),
        low || vent.pressure.length === 0 ? '' : pressureText(pressure),
        `${formatNumber(vent.soundLossDb[bandOf500Hz] ?? 0)} dB`,
      ];
    }),
  );
}

/** Index of 500 Hz among the 21 thirds from 50 Hz. */
const bandOf500Hz = 10;

export function dampSentence({ moisture, judged, fanOn }: AirResult): string | undefined {
  const setting = fanOn === null ? 'off' : judged;
  const found = moisture?.bySetting.find((each) => each.setting === setting);
  if (found === undefined || found.coldSurfaceMarginK === null) return undefined;
  const margin = found.coldSurfaceMarginK;
  return margin < 0
    ? `Water condenses on the cold surface: the dew point inside ends at ${formatNumber(found.endDewPointC, 1)} °C, ${formatNumber(-margin, 1)} K above it.`
    : `The cold surface stays ${formatNumber(margin, 1)} K above the dew point inside.`;
}

export function baseSentence(air: AirResult): string {
  const rate = formatFigures(air.generationM3PerS * 3.6e6);
  const room = air.supply.roomEndPpm;
  const supply =
    air.supply.model === 'two-zones' && room !== null
      ? `the room goes from ${formatQuantity(air.startPpm, 'ppm')} to ${formatQuantity(room, 'ppm')}`
      : `supply air ${formatQuantity(air.supplyPpm, 'ppm')}`;
  return `${formatFigures(air.volumeM3)} m³, ${air.people} ${air.people === 1 ? 'person' : 'people'}, ${rate} L/h of CO₂ in all${effortWords(air)}, ${supply}`;
}

/** What the breath is taken for, where the text does not state it. */
function effortWords({ breath }: AirResult): string {
  return breath.activityMet === null ? '' : ` (effort ${breath.effort})`;
}

export function heatSentence({ heat }: AirResult): string | undefined {
  if (heat === null) return undefined;
  const constant = heat.bySetting.at(-1)?.timeConstantMinutes;
  const lag =
    constant === null || constant === undefined ? '' : `, two thirds of the rise within ${formatNumber(constant)} min`;
  return `Heat: ${formatNumber(heat.gainsW)} W inside, ${formatFigures(heat.conductanceWPerK, 2)} W/K through the walls${lag}. ${heat.note}`;
}

function shortTime(minutes: number | null): string {
  return minutes === null ? '> 24 h' : minutesText(minutes);
}
