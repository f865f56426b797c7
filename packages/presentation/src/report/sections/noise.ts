import type { BoothResult, LevelTotals, ResultDocument } from '@boothwright/assessment';
import { chartHours } from '../../charts/chart-hours.js';
import { chartLevels, type LevelSeries } from '../../charts/chart-levels.js';
import { chartShares } from '../../charts/chart-shares.js';
import { bandName } from '../../numbers/format-frequency.js';
import { formatNumber } from '../../numbers/format-number.js';
import { bandLevel, rangedText, shareText, totalsText } from '../../numbers/level-words.js';
import { octaveCentres, octaveLevels } from '../../numbers/octaves.js';
import { type PathShare, pathShares } from '../../numbers/path-shares.js';
import { pathWords } from '../../numbers/path-words.js';
import { targetCurve } from '../../numbers/target-curve.js';
import { fanSettings, hoursWords, worstBand } from '../../text/sections/gets-in.js';
import { type Block, blocks, figureColumn, heading, list, table } from '../blocks.js';
import { type Figures, reportChart, withTable } from '../figures.js';

/** Lines and parts of a bar that stay apart in one picture. */
const mostDrawn = 3;
const mostParts = 5;
/** dB under the whole; what is quieter adds nothing, and its line would press the others flat. */
const farBelow = 20;

/** Noise at the microphone by source against the target, and the ways by which the loudest source comes in. */
export function noiseBlocks(
  name: string,
  booth: BoothResult,
  result: ResultDocument,
  suffix: string,
  figures: Figures,
): Block[] {
  const { noise, lowBands } = booth;
  const target = targetCurve(result.requirements, name);
  const sounds = soundsOf(booth);
  return blocks(
    heading(`What gets in${suffix}`),
    table(
      `Sounds${suffix}, dBA`,
      [{ head: 'sound' }, figureColumn('outside'), figureColumn('inside'), figureColumn('range'), { head: 'note' }],
      sounds.map(({ label, outside, inside, note }) => [
        label,
        outside === undefined ? '' : bandLevel(outside.dBA?.value),
        bandLevel(inside.dBA?.value),
        inside.dBA === null ? '' : `${formatNumber(inside.dBA.low)} to ${formatNumber(inside.dBA.high)}`,
        note,
      ]),
    ),
    list([
      `Together ${totalsText(noise.total)}`,
      worstBand(booth, target, result.grid.nominalHz),
      fanSettings(noise),
      hoursWords(noise),
      lowBands.decidedText,
      lowBands.text,
      noise.mounts && `Mounts: ${noise.mounts.text}`,
    ]),
    levelsFigure(name, booth, target, sounds, figures),
    ...sharesBlocks(name, booth, result, figures),
    hoursFigure(name, booth, figures),
  );
}

interface Sound {
  readonly label: string;
  readonly outside?: LevelTotals;
  readonly inside: LevelTotals;
  readonly note: string;
}

/** Everything that is heard by itself, the loudest inside first. */
function soundsOf({ noise }: BoothResult): readonly Sound[] {
  const setting = noise.bySetting.find(({ session }) => session)?.setting ?? 'on';
  const all: Sound[] = [
    ...noise.bySource.map(({ name, outside, inside, inTotal }) => ({
      label: name,
      outside,
      inside,
      note: inTotal ? '' : 'in other hours, not in the sum',
    })),
    ...(noise.fan ? [{ label: `fan, ${setting}`, inside: noise.fan, note: '' }] : []),
    ...(noise.airInDucts ? [{ label: 'air in ducts', inside: noise.airInDucts, note: '' }] : []),
    ...(noise.airAtOpenings ? [{ label: 'air at its openings', inside: noise.airAtOpenings, note: '' }] : []),
    ...noise.equipment.map(({ name, atMicrophone }) => ({ label: `${name}, inside`, inside: atMicrophone, note: '' })),
  ];
  const loudness = ({ inside }: Sound) => inside.dBA?.value ?? Number.NEGATIVE_INFINITY;
  return all.toSorted((a, b) => loudness(b) - loudness(a));
}

function levelsFigure(
  name: string,
  { noise }: BoothResult,
  target: ReturnType<typeof targetCurve>,
  sounds: readonly Sound[],
  figures: Figures,
): Block[] {
  const whole = octaveLevels(noise.total.byBand);
  const loudEnough = (noise.total.dBA?.value ?? 0) - farBelow;
  const heard = sounds.filter(({ note, inside }) => note === '' && (inside.dBA?.value ?? -Infinity) > loudEnough);
  const series: LevelSeries[] = [
    { label: 'all of it', role: 'behind', levelsDb: whole },
    ...(target ? [{ label: target.label, role: 'target', levelsDb: target.octaves } as const] : []),
    ...heard
      .slice(0, mostDrawn)
      .map(({ label, inside }) => ({ label, role: 'further', levelsDb: octaveLevels(inside.byBand) }) as const),
  ];
  const caption = `Noise at the microphone in ${name} by octave`;
  return withTable(
    figures,
    chartLevels({
      title: caption,
      description: totalsText(noise.total),
      nominalHz: octaveCentres,
      series,
      size: reportChart,
    }),
    caption,
    table(
      `${caption}, dB`,
      [{ head: 'sound' }, ...octaveCentres.map((hz) => figureColumn(bandName(hz))), figureColumn('dBA')],
      [
        ['all of it', ...whole.map(bandLevel), bandLevel(noise.total.dBA?.value)],
        ...(target ? [[target.label, ...target.octaves.map(bandLevel), '']] : []),
        ...sounds.map(({ label, inside }) => [
          label,
          ...octaveLevels(inside.byBand).map(bandLevel),
          bandLevel(inside.dBA?.value),
        ]),
        ...sounds.flatMap(({ label, outside }) =>
          outside === undefined
            ? []
            : [[`${label}, outside`, ...octaveLevels(outside.byBand).map(bandLevel), bandLevel(outside.dBA?.value)]],
        ),
      ],
    ),
  );
}

function sharesBlocks(name: string, booth: BoothResult, { grid }: ResultDocument, figures: Figures): Block[] {
  const loudest = booth.noise.bySource
    .filter(({ inTotal }) => inTotal)
    .toSorted((a, b) => (b.inside.dBA?.value ?? -Infinity) - (a.inside.dBA?.value ?? -Infinity))[0];
  if (loudest === undefined) return [];
  const shares = pathShares(booth, loudest, grid.nominalHz);
  const drawn = new Set(shares.toSorted((a, b) => most(b) - most(a)).slice(0, mostParts));
  const shown = shares.filter((share) => drawn.has(share));
  const rest = shares.filter((share) => !drawn.has(share));
  const caption = `How ${loudest.name} comes into ${name}: share of its energy inside by path and octave`;
  const svg = chartShares({
    title: caption,
    description: shown.map((share) => `${pathWords(share)} ${shareText(share.overall)}`).join(', '),
    columns: octaveCentres.map(bandName),
    parts: [
      ...shown.map((share) => ({ label: pathWords(share), shares: share.byOctave })),
      ...(rest.length > 0 ? [{ label: 'the rest', shares: sumsOf(rest), rest: true } as const] : []),
    ],
    size: reportChart,
  });
  return withTable(
    figures,
    svg,
    caption,
    table(
      caption,
      [{ head: 'path' }, ...octaveCentres.map((hz) => figureColumn(bandName(hz))), figureColumn('A-weighted')],
      shares.map((share) => [pathWords(share), ...share.byOctave.map(shareText), shareText(share.overall)]),
    ),
  );
}

/** What a path brings in the octave in which it brings most. */
function most({ byOctave }: PathShare): number {
  return Math.max(...byOctave.map((share) => share ?? 0));
}

function sumsOf(shares: readonly PathShare[]): (number | null)[] {
  return octaveCentres.map((_, octave) => {
    const values = shares.map(({ byOctave }) => byOctave[octave] ?? null);
    return values.includes(null) ? null : values.reduce<number>((sum, value) => sum + (value ?? 0), 0);
  });
}

function hoursFigure(name: string, { noise }: BoothResult, figures: Figures): Block[] {
  const { hours } = noise;
  if (hours === null) return [];
  const caption = `Noise in ${name} by the hour`;
  return withTable(
    figures,
    chartHours({ title: caption, description: hoursWords(noise) ?? caption, hours, size: reportChart }),
    caption,
    table(
      caption,
      [
        { head: 'hour' },
        figureColumn('inside'),
        { head: 'criterion' },
        { head: 'what is heard' },
        ...hours.requirements.map(({ text }) => ({ head: text.replace(/^require\s+/, '') })),
      ],
      hours.stateOfHour.map((index, hour) => {
        const state = hours.states[index];
        return [
          `${String(hour).padStart(2, '0')}:00`,
          rangedText(state?.dBA ?? null, 'dBA'),
          state?.nc ?? '',
          state?.sources.join(', ') || 'nothing that the text names',
          ...(state?.verdicts ?? []).map((verdict) => verdict.replace('-', ' ')),
        ];
      }),
    ),
  );
}
