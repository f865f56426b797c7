import type { BoothResult, LevelTotals, RequirementResult } from '@boothwright/assessment';
import { chartLevels, type LevelSeries } from '../charts/chart-levels.js';
import { hoverSize } from '../charts/frame.js';
import { svgToMarkdownImage } from '../charts/svg-to-markdown-image.js';
import { bandName } from '../numbers/format-frequency.js';
import { formatNumber } from '../numbers/format-number.js';
import { bandLevel, rangedText, totalsText } from '../numbers/level-words.js';
import { octaveCentres, octaveLevels } from '../numbers/octaves.js';
import { targetCurve } from '../numbers/target-curve.js';
import { millimetresText } from '../numbers/trade-units.js';
import { bullets, escapeMarkdown, paragraphs, table } from './markdown.js';

/** So many lines stay apart in one picture. */
const mostDrawn = 3;
const mostListed = 6;
/** dB under the whole; what is quieter adds nothing, and its line would press the others flat. */
const farBelow = 20;

/** What the microphone hears besides the voice: all of it against the target, and who brings it. */
export function microphoneHover(
  boothName: string,
  booth: BoothResult,
  requirements: readonly RequirementResult[] = [],
): string {
  const { total, roomTone, notPredicted } = booth.noise;
  const target = targetCurve(requirements, boothName);
  const whole = octaveLevels(total.byBand);
  const heard = heardInSession(booth);
  const all = contributions(booth);
  const parts = all.filter(({ name, airborne }) => !airborne || heard === undefined || heard.has(name));
  const silent = all.filter((part) => !parts.includes(part));
  const series: LevelSeries[] = [
    { label: 'all of it', role: 'behind', levelsDb: whole },
    ...(target ? [{ label: target.label, role: 'target', levelsDb: target.octaves } as const] : []),
    ...parts
      .filter(({ levels }) => (levels.dBA?.value ?? -Infinity) > (total.dBA?.value ?? 0) - farBelow)
      .slice(0, mostDrawn)
      .map(({ name, levels }) => ({ label: name, role: 'further', levelsDb: octaveLevels(levels.byBand) }) as const),
  ];
  const headline = `**Noise at the mic ${rangedText(total.dBA, 'dBA')}** in ${escapeMarkdown(boothName)}${
    roomTone ? ` · room tone **${rangedText(roomTone.dBFS, 'dBFS')}**` : ''
  }`;
  const description = `Noise at the microphone: ${totalsText(total)}`;
  const svg = chartLevels({
    title: `Noise at the microphone in ${boothName}`,
    description,
    nominalHz: octaveCentres,
    series,
  });
  const rest = parts.length - mostListed;
  return paragraphs(
    headline,
    svgToMarkdownImage(svg, description, hoverSize),
    table(
      ['octaves, dB', ...octaveCentres.map(bandName), 'dBA'],
      [
        ['**all of it**', ...whole.map(bandLevel), figure(total)],
        ...(target ? [[target.label, ...target.octaves.map(bandLevel), '']] : []),
        ...parts
          .slice(0, mostListed)
          .map(({ name, levels }) => [
            escapeMarkdown(name),
            ...octaveLevels(levels.byBand).map(bandLevel),
            figure(levels),
          ]),
      ],
    ),
    rest > 0 && `and ${rest} quieter`,
    silent.length > 0 &&
      `Not heard in the hours that count: ${silent.map(({ name }) => escapeMarkdown(name)).join(', ')}`,
    notPredicted.length > 0 &&
      `Not in it, because not predicted: ${notPredicted.map(({ name }) => escapeMarkdown(name)).join(', ')}`,
    roomTone && filtersLine(roomTone),
    roomTone && bullets(roomTone.assumptions.map(escapeMarkdown)),
  );
}

interface Contribution {
  readonly name: string;
  readonly levels: LevelTotals;
  /** From outside, so that it may have hours. */
  readonly airborne?: boolean;
}

/** What sounds while the session lasts; without one that says when it starts, what sounds in the loudest hour. */
function heardInSession({ noise }: BoothResult): ReadonlySet<string> | undefined {
  const { hours } = noise;
  if (hours === null) return undefined;
  const { session } = hours;
  if (session === null) {
    const loudest = hours.states.toSorted((a, b) => (b.dBA?.value ?? 0) - (a.dBA?.value ?? 0))[0];
    return new Set(loudest?.sources);
  }
  const first = Math.floor(session.startsMinutes / 60);
  const end = session.endsMinutes <= session.startsMinutes ? session.endsMinutes + 24 * 60 : session.endsMinutes;
  const count = Math.max(1, Math.ceil(end / 60) - first);
  const states = Array.from({ length: count }, (_, hour) => hours.states[hours.stateOfHour[(first + hour) % 24] ?? 0]);
  return new Set(states.flatMap((state) => state?.sources ?? []));
}

type RoomTone = NonNullable<BoothResult['noise']['roomTone']>;

/** Everything that is heard at the microphone by itself, the loudest first. */
function contributions({ noise }: BoothResult): Contribution[] {
  const all: Contribution[] = [
    ...noise.bySource.map(({ name, inside }) => ({ name, levels: inside, airborne: true })),
    ...(noise.fan ? [{ name: 'fan', levels: noise.fan }] : []),
    ...(noise.airInDucts ? [{ name: 'air in the ducts', levels: noise.airInDucts }] : []),
    ...(noise.airAtOpenings ? [{ name: 'air at its openings', levels: noise.airAtOpenings }] : []),
    ...(noise.airAtOpenings ? [{ name: 'air at its openings', levels: noise.airAtOpenings }] : []),
    ...noise.equipment.map(({ name, atMicrophone }) => ({ name, levels: atMicrophone })),
  ];
  const loudness = ({ dBA }: LevelTotals) => dBA?.value ?? Number.NEGATIVE_INFINITY;
  return all.sort((a, b) => loudness(b.levels) - loudness(a.levels));
}

const figure = ({ dBA }: LevelTotals) => (dBA === null ? '–' : formatNumber(dBA.value));

function filtersLine({ filters }: RoomTone): string {
  const words = filters.map(({ highPassHz, dBFS }) => `${filterName(highPassHz)} ${formatNumber(dBFS)} dBFS`);
  return `Room tone by high-pass filter: ${words.join(', ')}`;
}

const filterName = (hz: number | null) => (hz === null ? 'none' : `${formatNumber(hz)} Hz`);

/** What one fact of the microphone does to the room tone. Undefined for a fact that does nothing to it. */
export function microphoneFactHover(fact: string, booth: BoothResult): string | undefined {
  const { roomTone } = booth.noise;
  if (roomTone === null) return undefined;
  const headline = `**Room tone ${rangedText(roomTone.dBFS, 'dBFS')}**`;
  switch (fact) {
    case 'high-pass':
      return paragraphs(
        headline,
        table(
          ['high-pass filter', 'room tone'],
          roomTone.filters.map(({ highPassHz, dBFS }) => [
            `${filterName(highPassHz)}${highPassHz === roomTone.highPassHz ? ', yours' : ''}`,
            `${formatNumber(dBFS)} dBFS`,
          ]),
        ),
        'Second-order filters; the voice has little below 100 Hz, rumble has most of its energy there',
      );
    case 'pattern':
      return paragraphs(
        headline,
        `A microphone of the pattern ${escapeMarkdown(roomTone.pattern)} takes this off the noise of the room:`,
        table(
          ['third octave at', ...octaveCentres.map(bandName)],
          [
            [
              'dB',
              ...roomTone.patternRejectionDb.filter((_, index) => index % 3 === 1).map((dB) => formatNumber(dB, 1)),
            ],
          ],
        ),
      );
    case 'self-noise':
      return paragraphs(
        headline,
        `The microphone's own noise is ${shareOf(roomTone.shares.microphone)} of the noise in the recording, the room the rest`,
        roomTone.selfNoiseDbZ !== null &&
          `${formatNumber(roomTone.selfNoiseDbZ)} dB unweighted of its own, ${formatNumber(roomTone.noiseAtCapsuleDbZ)} dB in all at the capsule`,
      );
    case 'distance':
      return paragraphs(
        headline,
        `At ${millimetresText(roomTone.distanceM)} a ${escapeMarkdown(roomTone.effort)} voice is ${formatNumber(roomTone.voiceAtCapsuleDbZ)} dB at the capsule, the noise ${formatNumber(roomTone.noiseAtCapsuleDbZ)} dB; the gain sets the voice to ${formatNumber(roomTone.voiceSetToDbFS)} dBFS`,
        'Half the distance makes the voice 6 dB louder, so that less gain lifts less noise',
      );
    default:
      return undefined;
  }
}

function shareOf(share: number): string {
  const percent = 100 * share;
  return percent < 1 ? 'less than 1 %' : `${formatNumber(percent)} %`;
}
