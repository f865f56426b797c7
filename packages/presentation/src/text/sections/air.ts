import type { AirCurve, BoothResult } from '@boothwright/assessment';
import { minutesText } from '../../numbers/air-words.js';
import { formatFigures, formatNumber } from '../../numbers/format-number.js';
import { formatQuantity } from '../../numbers/format-quantity.js';
import { printable } from '../printable.js';
import { joinLines, section } from '../section.js';
import type { TextStyle } from '../text-style.js';
import { textTable } from '../text-table.js';
import { wrapText } from '../wrap-text.js';

/** How long the air lasts, with the fan on and off. */
export function airSection(booth: BoothResult, suffix: string, style: TextStyle): string | undefined {
  const { air } = booth;
  if (!air) return undefined;
  const curves = [air.fanOn, air.fanOff].filter((curve): curve is AirCurve => curve !== null);
  const right = 'right' as const;
  const table = textTable(
    [
      { head: 'CO₂' },
      { head: 'flow', align: right },
      { head: `after ${formatNumber(air.sessionMinutes)} min`, align: right },
      { head: 'to 1000 ppm', align: right },
      { head: 'to 1500 ppm', align: right },
      { head: 'to 2500 ppm', align: right },
    ],
    curves.map((curve) => [
      `fan ${curve.fan}`,
      `${formatNumber(curve.flowM3PerS * 1000, 1)} L/s`,
      formatQuantity(curve.endPpm, 'ppm'),
      shortTime(curve.minutesTo['1000']),
      shortTime(curve.minutesTo['1500']),
      shortTime(curve.minutesTo['2500']),
    ]),
  );
  const speeds = air.ductSpeeds.map(({ vent, mPerS }) => `${printable(vent)} ${formatFigures(mPerS, 2)} m/s`);
  const rate = formatFigures(air.generationM3PerS * 3.6e6);
  return section(
    `Air${suffix}`,
    joinLines(
      table,
      wrapText(
        `${formatFigures(air.volumeM3)} m³ of air, ${air.people} ${air.people === 1 ? 'person' : 'people'}, ${rate} L/h of CO₂ in all, ` +
          `supply air ${formatQuantity(air.supplyPpm, 'ppm')}${speeds.length > 0 ? `; speed in the duct: ${speeds.join(', ')}` : ''}`,
        style.width,
        '  ',
        '    ',
      ),
    ),
    style,
  );
}

function shortTime(minutes: number | null): string {
  return minutes === null ? '> 24 h' : minutesText(minutes);
}
