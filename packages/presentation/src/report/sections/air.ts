import type { AirCurve, BoothResult, RequirementResult, ResultDocument } from '@boothwright/assessment';
import { chartCo2 } from '../../charts/chart-co2.js';
import { chartTemperature } from '../../charts/chart-temperature.js';
import { airSentences, flowText, minutesText, pressureSentence, takesSentences } from '../../numbers/air-words.js';
import { formatNumber } from '../../numbers/format-number.js';
import { formatQuantity } from '../../numbers/format-quantity.js';
import { baseSentence, dampSentence } from '../../text/sections/air.js';
import { type Block, blocks, figureColumn, heading, list, table, text } from '../blocks.js';
import { type Figures, reportChart, withTable } from '../figures.js';

/** Rows of a table of a curve in time. */
const mostTimes = 13;

/** How long the air lasts and how warm it gets, at each setting of the fans. */
export function airBlocks(
  name: string,
  { air, ventilation }: BoothResult,
  { requirements }: ResultDocument,
  suffix: string,
  figures: Figures,
): Block[] {
  if (air === null)
    return blocks(
      heading(`Air${suffix}`),
      text('Not assessed: the text has no session, so nobody is known to breathe.'),
    );
  const curves = [air.fanOff, air.fanLow, air.fanHigh].filter((curve): curve is AirCurve => curve !== null);
  const asked = (kind: string) => requirementOf(kind, name, requirements);
  const co2 = asked('co2');
  const warmer = asked('temperature-rise');
  const caption = `CO₂ in ${name} with the door shut`;
  return blocks(
    heading(`Air${suffix}`),
    table(
      `CO₂ and warmth${suffix} by setting of the fans`,
      [
        { head: 'fan' },
        figureColumn('flow'),
        figureColumn(`after ${formatNumber(air.sessionMinutes)} min`),
        figureColumn('to 1000 ppm'),
        figureColumn('to 1500 ppm'),
        figureColumn('to 2500 ppm'),
        figureColumn('warmer by'),
      ],
      curves.map((curve) => {
        const rise = air.heat?.bySetting.find(({ setting }) => setting === curve.setting)?.endRiseK;
        return [
          `${curve.setting}${curve.setting === air.judged ? ', session' : ''}`,
          flowText(curve.flowM3PerS),
          formatQuantity(curve.endPpm, 'ppm'),
          ...(['1000', '1500', '2500'] as const).map((level) => minutesText(curve.minutesTo[level])),
          rise === undefined ? '' : formatQuantity(rise, 'K'),
        ];
      }),
    ),
    list([
      baseSentence(air),
      pressureSentence(ventilation, air.judged),
      takesSentences(air.takes),
      dampSentence(air),
      air.heatNote,
      ventilation.wayNote,
    ]),
    withTable(
      figures,
      chartCo2({
        title: caption,
        description: airSentences(air).join('; '),
        air,
        ...(co2 === undefined ? {} : { limitPpm: co2.limit }),
        size: reportChart,
      }),
      caption,
      curvesTable(
        `${caption}, ppm`,
        curves.map(({ setting, minutes, ppm }) => ({ setting, minutes, values: ppm })),
        0,
      ),
    ),
    air.heat && heatFigure(name, air.heat, warmer, figures),
  );
}

function heatFigure(
  name: string,
  heat: NonNullable<NonNullable<BoothResult['air']>['heat']>,
  asked: RequirementResult | undefined,
  figures: Figures,
): Block[] {
  const caption = `Warmth in ${name} above the room`;
  return withTable(
    figures,
    chartTemperature({
      title: caption,
      description: heat.bySetting
        .map(({ setting, endRiseK }) => `fan ${setting}: ${formatQuantity(endRiseK, 'K')}`)
        .join('; '),
      heat,
      ...(asked === undefined ? {} : { limitK: asked.limit }),
      size: reportChart,
    }),
    caption,
    curvesTable(
      `${caption}, K`,
      heat.bySetting.map(({ setting, minutes, riseK }) => ({ setting, minutes, values: riseK })),
      1,
    ),
  );
}

function requirementOf(kind: string, booth: string, requirements: readonly RequirementResult[]) {
  return requirements.find((each) => each.kind === kind && (each.booth === null || each.booth === booth));
}

interface Curve {
  readonly setting: string;
  readonly minutes: readonly number[];
  readonly values: readonly number[];
}

/** Every so many minutes a row, the last included; curves of one session share their times. */
function curvesTable(caption: string, curves: readonly Curve[], decimals: number) {
  const minutes = curves[0]?.minutes ?? [];
  const step = Math.max(1, Math.ceil((minutes.length - 1) / (mostTimes - 1)));
  const rows = minutes.map((_, index) => index).filter((index) => index % step === 0 || index === minutes.length - 1);
  return table(
    caption,
    [figureColumn('min'), ...curves.map(({ setting }) => figureColumn(`fan ${setting}`))],
    rows.map((index) => [
      formatNumber(minutes[index] ?? 0),
      ...curves.map(({ minutes: own, values }) =>
        own[index] === minutes[index] && values[index] !== undefined ? formatNumber(values[index], decimals) : '–',
      ),
    ]),
  );
}
