import type { BoothResult, LevelTotals, TextRange } from '@boothwright/assessment';
import { chartLevels, furtherLooks, type LevelSeries, levelLooks } from '../../charts/chart-levels.js';
import { bandName } from '../../numbers/format-frequency.js';
import { bandLevel, rangedText, totalsText } from '../../numbers/level-words.js';
import { octaveCentres, octaveLevels } from '../../numbers/octaves.js';
import { targetCurve } from '../../numbers/target-curve.js';
import { hoursWords, worstBand } from '../../text/sections/gets-in.js';
import { figureHtml, figures, type KeyEntry, pointsHtml } from '../sheet-html.js';
import type { SheetInput } from '../sheet-input.js';
import { newMarks, type SheetSection } from '../sheet-section.js';

/** Lines that stay apart in one picture. */
const mostDrawn = 3;

/** Noise at the microphone by source against the curve that is asked for. */
export function noiseSection({ results, name, booth, size }: SheetInput): SheetSection {
  const { noise } = booth;
  const marks = newMarks();
  const target = targetCurve(results.requirements, name);
  const asked = results.requirements.find(
    ({ kind, unit, booth: of }) => kind === 'room-tone' && unit === 'NC' && (of === null || of === name),
  );
  const sounds = soundsOf(booth).map((sound) => ({ ...sound, mark: sound.range && marks.of(sound.range) }));
  const drawn = sounds.filter(({ inTotal }) => inTotal).slice(0, mostDrawn);
  const whole = octaveLevels(noise.total.byBand);
  const targetMark = asked && marks.of(asked.range);
  const series: LevelSeries[] = [
    { label: 'all of it', role: 'behind', levelsDb: whole, mark: marks.of(booth.range) },
    ...(target ? [{ label: target.label, role: 'target', levelsDb: target.octaves, mark: targetMark } as const] : []),
    ...drawn.map(
      ({ label, inside, mark }) => ({ label, role: 'further', levelsDb: octaveLevels(inside.byBand), mark }) as const,
    ),
  ];
  const key: KeyEntry[] = [
    {
      label: 'all of it',
      figure: rangedText(noise.total.dBA, 'dBA'),
      ...levelLooks.behind,
      mark: marks.of(booth.range),
    },
    ...(target ? [{ label: `${target.label} asked`, ...levelLooks.target, mark: targetMark }] : []),
    ...drawn.map(({ label, inside, mark }, index) => ({
      label,
      figure: rangedText(inside.dBA, 'dBA'),
      ...(furtherLooks[index] ?? levelLooks.further),
      mark,
    })),
  ];
  return {
    id: 'noise',
    title: 'Noise at the microphone',
    summary: [rangedText(noise.total.dBA, 'dBA'), noise.total.nc?.text].filter(Boolean).join(' · '),
    html:
      figureHtml(
        chartLevels({
          title: `Noise at the microphone in ${name} by octave`,
          description: totalsText(noise.total),
          nominalHz: octaveCentres,
          series,
          size,
        }),
        key,
        {
          caption: `Noise at the microphone in ${name} by octave, dB, all sounds`,
          columns: [{ head: 'sound' }, ...figures(...octaveCentres.map(bandName), 'dBA')],
          rows: [
            ['all of it', ...whole.map(bandLevel), bandLevel(noise.total.dBA?.value)],
            ...(target ? [[target.label, ...target.octaves.map(bandLevel), '']] : []),
            ...sounds.map(({ label, inside, inTotal }) => [
              inTotal ? label : `${label} (in other hours)`,
              ...octaveLevels(inside.byBand).map(bandLevel),
              bandLevel(inside.dBA?.value),
            ]),
          ],
        },
      ) +
      pointsHtml([
        worstBand(booth, target, results.grid.nominalHz),
        hoursWords(noise),
        ...noise.notPredicted.map(({ name: sound, why }) => `Not predicted: ${sound}: ${why}`),
      ]),
    marks: marks.ranges,
  };
}

interface Sound {
  readonly label: string;
  readonly inside: LevelTotals;
  readonly inTotal: boolean;
  readonly range?: TextRange | undefined;
}

/** Everything that is heard by itself, the loudest first. */
function soundsOf({ noise, ventilation }: BoothResult): readonly Sound[] {
  const setting = noise.bySetting.find(({ session }) => session)?.setting ?? 'on';
  const vent = ventilation.vents[0]?.range;
  const own = (label: string, inside: LevelTotals | null): Sound[] =>
    inside === null ? [] : [{ label, inside, inTotal: true, range: vent }];
  const all: Sound[] = [
    ...noise.bySource.map(({ name: label, inside, inTotal, range }) => ({ label, inside, inTotal, range })),
    ...own(`fan, ${setting}`, noise.fan),
    ...own('air in ducts', noise.airInDucts),
    ...own('air at its openings', noise.airAtOpenings),
    ...noise.equipment.map(({ name: label, atMicrophone, range }) => ({
      label: `${label}, inside`,
      inside: atMicrophone,
      inTotal: true,
      range,
    })),
  ];
  const loudness = ({ inside }: Sound) => inside.dBA?.value ?? Number.NEGATIVE_INFINITY;
  return all.toSorted((a, b) => loudness(b) - loudness(a));
}
