import type { AirCurve, RequirementResult, TextRange } from '@boothwright/assessment';
import { chartCo2 } from '../../charts/chart-co2.js';
import { chartTemperature } from '../../charts/chart-temperature.js';
import { palette } from '../../charts/palette.js';
import { settingLooks } from '../../charts/time-curves.js';
import { airSentences, minutesText, pressureSentence, takesSentences } from '../../numbers/air-words.js';
import { formatNumber } from '../../numbers/format-number.js';
import { formatQuantity } from '../../numbers/format-quantity.js';
import { figureHtml, figures, html, type KeyEntry, pointsHtml, type SheetTable } from '../sheet-html.js';
import type { SheetInput } from '../sheet-input.js';
import { newMarks, type SheetSection } from '../sheet-section.js';

/** Rows of a table of a curve in time. */
const mostTimes = 13;

/** CO2 and warmth from the moment the door shuts to the end of the session. */
export function airSection({ results, name, booth, sessionRange, size }: SheetInput): SheetSection {
  const { air, ventilation } = booth;
  const marks = newMarks();
  const common = { id: 'air', title: 'Air and warmth', marks: marks.ranges } as const;
  if (air === null) {
    const why =
      'The text has no session, so nobody is known to breathe. A `session { … }` block says who is inside and how long.';
    return { ...common, summary: 'not assessed', html: `<p class="note">${html(why)}</p>` };
  }
  const curves = [air.fanHigh, air.fanLow, air.fanOff].filter((curve): curve is AirCurve => curve !== null);
  const asked = (kind: string) =>
    results.requirements.find((each) => each.kind === kind && (each.booth === null || each.booth === name));
  const vent: TextRange | undefined = ventilation.vents[0]?.range ?? sessionRange;
  const mark = vent && marks.of(vent);
  const judged = curves.find(({ setting }) => setting === air.judged);
  const limitKey = (limit: RequirementResult | undefined): KeyEntry[] =>
    limit === undefined
      ? []
      : [
          {
            label: `asked: at most ${formatQuantity(limit.limit, limit.unit)}`,
            colour: palette.orange,
            dash: '5 3',
            mark: marks.of(limit.range),
          },
        ];
  const [co2, warmer] = [asked('co2'), asked('temperature-rise')];
  const { heat } = air;
  const minutes = formatNumber(air.sessionMinutes);
  return {
    ...common,
    summary: [
      judged && formatQuantity(judged.endPpm, 'ppm'),
      heat &&
        `+${formatQuantity(heat.bySetting.find(({ setting }) => setting === air.judged)?.endRiseK ?? Number.NaN, 'K')}`,
    ]
      .filter(Boolean)
      .join(' · ')
      .concat(` after ${minutes} min`),
    html:
      figureHtml(
        chartCo2({
          title: `CO₂ in ${name} with the door shut`,
          description: airSentences(air).join('; '),
          air,
          ...(co2 === undefined ? {} : { limitPpm: co2.limit }),
          size,
        }),
        [
          ...curves.map(({ setting, endPpm }) => ({
            label: `fan ${setting}`,
            figure: formatQuantity(endPpm, 'ppm'),
            ...settingLooks[setting],
            mark,
          })),
          ...limitKey(co2),
        ],
        curvesTable(
          `CO₂ in ${name} with the door shut, ppm`,
          curves.map(({ setting, minutes: own, ppm }) => ({ setting, minutes: own, values: ppm })),
          0,
        ),
      ) +
      (heat === null
        ? ''
        : figureHtml(
            chartTemperature({
              title: `Warmth in ${name} above the room`,
              description: heat.bySetting
                .map(({ setting, endRiseK }) => `fan ${setting}: ${formatQuantity(endRiseK, 'K')}`)
                .join('; '),
              heat,
              ...(warmer === undefined ? {} : { limitK: warmer.limit }),
              size,
            }),
            [
              ...heat.bySetting.map(({ setting, endRiseK }) => ({
                label: `fan ${setting}`,
                figure: `+${formatQuantity(endRiseK, 'K')}`,
                ...settingLooks[setting],
                mark: sessionRange && marks.of(sessionRange),
              })),
              ...limitKey(warmer),
            ],
            curvesTable(
              `Warmth in ${name} above the room, K`,
              heat.bySetting.map(({ setting, minutes: own, riseK }) => ({ setting, minutes: own, values: riseK })),
              1,
            ),
          )) +
      pointsHtml([
        ...curves.map(({ setting, minutesTo }) => `Fan ${setting}: 1000 ppm ${minutesText(minutesTo['1000'])}`),
        pressureSentence(ventilation, air.judged),
        takesSentences(air.takes),
        air.heatNote,
      ]),
  };
}

interface Curve {
  readonly setting: string;
  readonly minutes: readonly number[];
  readonly values: readonly number[];
}

/** Every so many minutes a row, the last included; curves of one session share their times. */
function curvesTable(caption: string, curves: readonly Curve[], decimals: number): SheetTable {
  const minutes = curves[0]?.minutes ?? [];
  const step = Math.max(1, Math.ceil((minutes.length - 1) / (mostTimes - 1)));
  const rows = minutes.map((_, index) => index).filter((index) => index % step === 0 || index === minutes.length - 1);
  return {
    caption,
    columns: figures('min', ...curves.map(({ setting }) => `fan ${setting}`)),
    rows: rows.map((index) => [
      formatNumber(minutes[index] ?? 0),
      ...curves.map(({ minutes: own, values }) =>
        own[index] === minutes[index] && values[index] !== undefined ? formatNumber(values[index], decimals) : '–',
      ),
    ]),
  };
}
