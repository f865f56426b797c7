import type { AirCurve, AirResult, BoothResult, RequirementResult } from '@boothwright/assessment';
import { chartCo2 } from '../charts/chart-co2.js';
import { chartTemperature } from '../charts/chart-temperature.js';
import { hoverSize } from '../charts/frame.js';
import { svgToMarkdownImage } from '../charts/svg-to-markdown-image.js';
import { airSentences, minutesText, takesSentences } from '../numbers/air-words.js';
import { formatFigures, formatNumber } from '../numbers/format-number.js';
import { formatQuantity } from '../numbers/format-quantity.js';
import { rangedText } from '../numbers/level-words.js';
import { airFlowText, temperatureDifferenceText, temperatureText, volumeText } from '../numbers/trade-units.js';
import { escapeMarkdown, paragraphs, table } from './markdown.js';

const order = ['off', 'low', 'high'] as const;

/** How the air of a session ends, and how long it takes to the levels that matter, at each setting of the fans. */
export function sessionAirHover(
  boothName: string,
  booth: BoothResult,
  requirements: readonly RequirementResult[] = [],
): string | undefined {
  const { air } = booth;
  if (air === null) return undefined;
  const asked = requirementOf('co2', boothName, requirements);
  const curve = air.judged === 'off' ? air.fanOff : (air.fanOn ?? air.fanOff);
  const sentences = airSentences(air);
  const figure = asked?.value
    ? rangedText(asked.value, 'ppm')
    : formatQuantity(air.takes?.lastPeakPpm ?? curve.endPpm, 'ppm');
  const when = air.takes === null ? `after ${formatNumber(air.sessionMinutes)} min` : 'at the end of the last take';
  const svg = chartCo2({
    title: `CO₂ in ${boothName}`,
    description: sentences.join('; '),
    air,
    ...(asked === undefined ? {} : { limitPpm: asked.limit }),
  });
  return paragraphs(
    `**CO₂ ${figure}** ${when} in ${escapeMarkdown(boothName)}, fan ${curve.setting}`,
    svgToMarkdownImage(svg, `CO₂ in ${boothName}. ${sentences.join('; ')}`, hoverSize),
    table(
      [
        'fan',
        'flow',
        `after ${formatNumber(air.sessionMinutes)} min`,
        'to 1000 ppm',
        'to 1500',
        'to 2500',
        'warmer by',
      ],
      curvesOf(air).map((each) => [
        `${each.setting}${each.setting === air.judged ? ', session' : ''}`,
        airFlowText(each.flowM3PerS),
        formatQuantity(each.endPpm, 'ppm'),
        minutesText(each.minutesTo['1000']),
        minutesText(each.minutesTo['1500']),
        minutesText(each.minutesTo['2500']),
        riseText(air, each.setting),
      ]),
    ),
    takesSentences(air.takes),
    air.takes && escapeMarkdown(air.takes.note),
    generationText(air),
    escapeMarkdown(air.supply.note),
  );
}

/** How warm it gets. Undefined without a session; says why where it is not known. */
export function heatHover(
  boothName: string,
  booth: BoothResult,
  requirements: readonly RequirementResult[] = [],
): string | undefined {
  const { air } = booth;
  if (air === null) return undefined;
  if (air.heat === null)
    return air.heatNote ? `**Not known** how warm it gets: ${escapeMarkdown(air.heatNote)}` : undefined;
  const { heat } = air;
  const asked = requirementOf('temperature-rise', boothName, requirements);
  const judged = heat.bySetting.find(({ setting }) => setting === air.judged) ?? heat.bySetting.at(-1);
  if (judged === undefined) return undefined;
  const figure = asked?.value ? rangedText(asked.value, 'K') : temperatureDifferenceText(judged.endRiseK);
  const headline = `**${figure} warmer** than the room after ${formatNumber(air.sessionMinutes)} min in ${escapeMarkdown(boothName)}, fan ${judged.setting}`;
  const description = `Warmer after ${formatNumber(air.sessionMinutes)} min by ${heat.bySetting
    .map(({ setting, endRiseK }) => `${temperatureDifferenceText(endRiseK)} with the fan ${setting}`)
    .join(', ')}`;
  const svg = chartTemperature({
    title: `Temperature in ${boothName}`,
    description,
    heat,
    ...(asked === undefined ? {} : { limitK: asked.limit }),
  });
  return paragraphs(
    headline,
    svgToMarkdownImage(svg, `Temperature in ${boothName}. ${description}`, hoverSize),
    table(
      ['fan', `after ${formatNumber(air.sessionMinutes)} min`, 'in the long run', 'two thirds of it after'],
      order.flatMap((setting) =>
        heat.bySetting
          .filter((each) => each.setting === setting)
          .map((each) => [
            `${setting}${setting === air.judged ? ', session' : ''}`,
            temperatureDifferenceText(each.endRiseK),
            each.steadyRiseK === null ? '–' : temperatureDifferenceText(each.steadyRiseK),
            each.timeConstantMinutes === null ? '–' : minutesText(each.timeConstantMinutes),
          ]),
      ),
    ),
    `${formatNumber(heat.gainsW)} W inside: ${formatNumber(heat.peopleW)} W of people, ${formatNumber(heat.equipmentW)} W of lamps and equipment; ${formatFigures(heat.conductanceWPerK, 2)} W/K go out through the faces`,
    escapeMarkdown(heat.note),
  );
}

/** How damp it gets, and whether water condenses on the cold surface that the text names. */
export function moistureHover(boothName: string, { air }: BoothResult): string | undefined {
  if (!air?.moisture) return undefined;
  const { moisture } = air;
  const judged = moisture.bySetting.find(({ setting }) => setting === air.judged) ?? moisture.bySetting.at(-1);
  if (judged === undefined) return undefined;
  const margin = judged.coldSurfaceMarginK;
  const cold =
    margin === null
      ? 'no `cold-surface` is stated'
      : margin < 0
        ? `water condenses on the cold surface, ${temperatureDifferenceText(-margin)} below it`
        : `the cold surface is ${temperatureDifferenceText(margin)} above it`;
  return paragraphs(
    `**Dew point ${temperatureText(judged.endDewPointC)}** after ${formatNumber(air.sessionMinutes)} min in ${escapeMarkdown(boothName)}, fan ${judged.setting}: ${cold}`,
    table(
      ['fan', 'humidity at the end', 'dew point', 'cold surface above it by'],
      order.flatMap((setting) =>
        moisture.bySetting
          .filter((each) => each.setting === setting)
          .map((each) => [
            `${setting}${setting === air.judged ? ', session' : ''}`,
            `${formatNumber(each.endRelativeHumidity * 100)} %`,
            temperatureText(each.endDewPointC),
            each.coldSurfaceMarginK === null ? '–' : temperatureDifferenceText(each.coldSurfaceMarginK),
          ]),
      ),
    ),
    `${formatFigures(moisture.generationKgPerS * 3.6e6, 2)} g of water an hour from people`,
    escapeMarkdown(moisture.note),
  );
}

/** What the air is that the vents bring. */
export function supplyHover(boothName: string, { air }: BoothResult): string | undefined {
  if (air === null) return undefined;
  const room = air.supply.roomEndPpm;
  return paragraphs(
    `**Air supplied ${formatQuantity(air.supplyPpm, 'ppm')}** at the end of the session in ${escapeMarkdown(boothName)}`,
    room !== null && `The room goes from ${formatQuantity(air.startPpm, 'ppm')} to ${formatQuantity(room, 'ppm')}`,
    escapeMarkdown(air.supply.note),
    generationText(air),
  );
}

function curvesOf(air: AirResult): AirCurve[] {
  return [air.fanOff, air.fanLow, air.fanHigh].filter((curve): curve is AirCurve => curve !== null);
}

function riseText({ heat }: AirResult, of: AirCurve['setting']): string {
  const rise = heat?.bySetting.find(({ setting }) => setting === of)?.endRiseK;
  return rise === undefined ? '–' : temperatureDifferenceText(rise);
}

function generationText({ people, generationM3PerS, volumeM3 }: AirResult): string {
  return `${people} ${people === 1 ? 'person' : 'people'}, ${formatFigures(generationM3PerS * 3.6e6)} L/h of CO₂ in all, ${volumeText(volumeM3)} of air`;
}

function requirementOf(kind: string, booth: string, requirements: readonly RequirementResult[]) {
  return requirements.find((each) => each.kind === kind && (each.booth === null || each.booth === booth));
}
