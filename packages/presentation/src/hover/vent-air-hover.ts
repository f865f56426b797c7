import type { BoothResult, VentAirResult } from '@boothwright/assessment';
import { chartLevels } from '../charts/chart-levels.js';
import { hoverSize } from '../charts/frame.js';
import { svgToMarkdownImage } from '../charts/svg-to-markdown-image.js';
import { airHeardText } from '../numbers/air-heard.js';
import { flowText, pressureSentence, pressureText } from '../numbers/air-words.js';
import { bandName } from '../numbers/format-frequency.js';
import { bandLevel, rangedText } from '../numbers/level-words.js';
import { octaveCentres, octaveLoss } from '../numbers/octaves.js';
import { airSpeedText, areaText } from '../numbers/trade-units.js';
import { escapeMarkdown, paragraphs, table } from './markdown.js';

const litres = (flow: number | null) => (flow === null ? '–' : flowText(flow));
const speed = (metres: number | null) => (metres === null ? '–' : airSpeedText(metres));
const pascals = (pa: number | null) => (pa === null ? '–' : pressureText(pa));

/** The air in one vent: how much, how fast, what it takes, and what each part keeps off the sound on its way in. */
export function ventAirHover(name: string, booth: BoothResult): string | undefined {
  const vent = booth.ventilation.vents.find((each) => each.name === name);
  if (vent === undefined) return undefined;
  const fastest = vent.sections.toSorted((a, b) => (b.highMPerS ?? 0) - (a.highMPerS ?? 0))[0];
  const pressure = vent.pressure.reduce((sum, { pa }) => sum + pa, 0);
  const heard = airHeardText(name, booth);
  const words = [
    vent.direction === null
      ? 'no air is moved'
      : `air goes ${vent.direction}${vent.directionStated ? '' : ' (assumed)'}`,
    ...(vent.flowHighM3PerS === null ? [] : [litres(vent.flowHighM3PerS)]),
    ...(fastest?.highMPerS ? [`fastest in the ${fastest.part}, ${speed(fastest.highMPerS)}`] : []),
    ...(vent.pressure.length > 0 ? [`takes ${pascals(pressure)}`] : []),
    ...(heard === undefined ? [] : [heard]),
  ];
  return paragraphs(
    `**Air**: ${words.join(' · ')}`,
    partsTable(vent),
    vent.sound.length > 0 && soundPicture(vent),
    vent.sound.length > 0 &&
      table(
        ['keeps off, dB', ...octaveCentres.map(bandName)],
        [
          ...vent.sound.map(({ part, lossDb }) => [partName(part), ...octaveLoss(lossDb).map(bandLevel)]),
          ['**together**', ...octaveLoss(vent.soundLossDb).map(bandLevel)],
        ],
      ),
    vent.sound.length > 0 &&
      'Each part as if alone; together they keep off no more than what goes round them through walls and casing',
  );
}

/** One part of a vent. Undefined for a vent or a part of which nothing is known. */
export function ventPartHover(part: string, ventName: string, booth: BoothResult): string | undefined {
  const vent = booth.ventilation.vents.find((each) => each.name === ventName);
  if (vent === undefined) return undefined;
  const section = vent.sections.find((each) => each.part === part);
  const pressure = vent.pressure.find((each) => each.part === part || each.part === `${part}s`)?.pa ?? null;
  const sound = vent.sound.find((each) => each.part === part || each.part === `${part}s`);
  if (section === undefined && pressure === null && sound === undefined) return undefined;
  const heard = airHeardText(ventName, booth);
  const words = [
    ...(section?.highMPerS ? [`${speed(section.highMPerS)} at full speed`] : []),
    ...(section === undefined ? [] : [`clear ${areaText(section.areaM2)}`]),
    ...(pressure === null ? [] : [`takes ${pascals(pressure)}`]),
    ...(part === 'grille' && heard !== undefined ? [heard] : []),
  ];
  return paragraphs(
    `**${partName(part)} of ${escapeMarkdown(ventName)}**${words.length > 0 ? `: ${words.join(' · ')}` : ''}`,
    sound &&
      table(
        ['keeps off, dB', ...octaveCentres.map(bandName)],
        [
          [partName(part), ...octaveLoss(sound.lossDb).map(bandLevel)],
          ['whole vent', ...octaveLoss(vent.soundLossDb).map(bandLevel)],
        ],
      ),
  );
}

/** What the fan moves against what, and what it does to the noise at the microphone, at each setting. */
export function fanHover(ventName: string, boothName: string, booth: BoothResult): string | undefined {
  const { ventilation, noise, air } = booth;
  const sentence = pressureSentence(ventilation, air?.judged ?? 'high');
  if (sentence === undefined) return undefined;
  const flows = { off: null, low: ventilation.low, high: ventilation.high } as const;
  const own = noise.fanParts.filter(({ vent }) => vent === ventName);
  return paragraphs(
    `**${escapeMarkdown(sentence)}**`,
    table(
      [`fan of ${escapeMarkdown(boothName)}`, 'flow', 'needs', 'booth against room', 'noise at the mic', 'room tone'],
      noise.bySetting.map(({ setting, session, total, roomToneDbFS }) => {
        const flow = flows[setting];
        return [
          `${setting}${session ? ', session' : ''}`,
          litres(flow?.flowM3PerS ?? null),
          pascals(flow?.neededPa ?? null),
          pascals(flow?.boothPressurePa ?? null),
          rangedText(total.dBA, 'dBA'),
          rangedText(roomToneDbFS, 'dBFS'),
        ];
      }),
    ),
    noise.fan === null
      ? 'Its own sound is not in it: `sound-power` says it'
      : `The fan alone ${rangedText(noise.fan.dBA, 'dBA')}, by its duct and through the booth`,
    own.length > 0 &&
      table(
        ['fan alone, third octave at', ...octaveCentres.map(bandName)],
        own.map(({ way, byBand }) => [
          way === 'duct' ? 'by its duct' : 'through the room',
          ...byBand.filter((_, index) => index % 3 === 1).map(bandLevel),
        ]),
      ),
    ventilation.wayNote !== '' && escapeMarkdown(ventilation.wayNote),
  );
}

function partsTable({ sections, pressure }: VentAirResult): string | undefined {
  const parts = [...new Set([...sections.map(({ part }) => part), ...pressure.map(({ part }) => singular(part))])];
  if (parts.length === 0) return undefined;
  return table(
    ['part', 'clear', 'fan low', 'fan high', 'takes'],
    parts.map((part) => {
      const section = sections.find((each) => each.part === part);
      const pa = pressure.find((each) => singular(each.part) === part)?.pa ?? null;
      return [
        partName(part),
        section === undefined ? '' : areaText(section.areaM2),
        section === undefined ? '' : speed(section.lowMPerS),
        section === undefined ? '' : speed(section.highMPerS),
        pascals(pa),
      ];
    }),
  );
}

function soundPicture(vent: VentAirResult): string {
  const description = `What ${vent.name} keeps off the sound on its way in`;
  const svg = chartLevels({
    title: description,
    description,
    nominalHz: octaveCentres,
    label: 'keeps off, dB',
    series: [
      { label: 'together', role: 'behind', levelsDb: octaveLoss(vent.soundLossDb) },
      ...vent.sound
        .slice(0, 3)
        .map(({ part, lossDb }) => ({ label: partName(part), role: 'further', levelsDb: octaveLoss(lossDb) }) as const),
    ],
  });
  return svgToMarkdownImage(svg, description, hoverSize);
}

const singular = (part: string) => (part === 'chambers' ? 'chamber' : part);

function partName(part: string): string {
  if (part === 'end' || part === 'ends') return 'open ends';
  return part === 'chambers' ? 'chamber' : part;
}
