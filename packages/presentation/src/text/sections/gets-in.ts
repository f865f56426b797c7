import { energyOf, frequencyWeighting, thirdOctaveBands } from '@boothwright/acoustics';
import type { BoothResult, LevelTotals, ResultDocument } from '@boothwright/assessment';
import { bandName } from '../../numbers/format-frequency.js';
import { formatNumber } from '../../numbers/format-number.js';
import { bandLevel, rangedText, shareText, totalsText } from '../../numbers/level-words.js';
import { octaveCentres, octaveLevels } from '../../numbers/octaves.js';
import { pathShares } from '../../numbers/path-shares.js';
import { pathWords } from '../../numbers/path-words.js';
import { targetCurve } from '../../numbers/target-curve.js';
import { printable } from '../printable.js';
import { joinLines, section } from '../section.js';
import type { TextStyle } from '../text-style.js';
import { textTable } from '../text-table.js';
import { wrapText } from '../wrap-text.js';
import { getsInBands } from './gets-in-bands.js';

type Noise = BoothResult['noise'];
type Target = ReturnType<typeof targetCurve>;

/** What is heard where the microphone stands: every sound, the worst band, the settings of the fan, the quiet hours. */
export function getsInSection(
  name: string,
  booth: BoothResult,
  result: ResultDocument,
  style: TextStyle,
): string | undefined {
  const target = targetCurve(result.requirements, name);
  const { noise } = booth;
  const wrapped = (text: string | undefined | null) =>
    text ? wrapText(printable(text), style.width, '  ', '    ') : undefined;
  const summary = joinLines(
    soundsTable(noise),
    wrapped(`Together ${totalsText(noise.total)}${worstHours(noise)}`),
    wrapped(worstBand(booth, target, result.grid.nominalHz)),
    wrapped(fanSettings(noise)),
    wrapped(hoursWords(noise)),
    ...notPredictedWords(noise, style).map(wrapped),
    style.detail === 'full' && noise.mounts !== null && wrapped(`Mounts: ${noise.mounts.text}`),
    wrapped(lowWords(booth, style)),
    wrapped(booth.lowBands.decidedText),
  );
  const bands = style.detail === 'full' ? getsInBands(booth, target, result.grid.nominalHz, style) : undefined;
  return section(
    `What gets in${result.booths[name] !== undefined && Object.keys(result.booths).length > 1 ? ` (${name})` : ''}, dBA`,
    [summary, bands].filter(Boolean).join('\n\n'),
    style,
  );
}

/** One line a sound: outside, inside, what is kept out. */
function soundsTable({
  bySource,
  fan,
  airInDucts,
  airAtOpenings,
  equipment,
  bySetting,
  roomTone,
  total,
}: Noise): string {
  const right = 'right' as const;
  const dBA = (totals: LevelTotals) => bandLevel(totals.dBA?.value);
  const setting = bySetting.find(({ session }) => session)?.setting;
  const range = ({ dBA: ranged }: LevelTotals) =>
    ranged === null ? '' : `${formatNumber(ranged.low)} to ${formatNumber(ranged.high)}`;
  const own = (label: string, totals: LevelTotals) => [printable(label), '', dBA(totals), range(totals)];
  return textTable(
    [
      { head: 'sound' },
      { head: 'outside', align: right },
      { head: 'inside', align: right },
      { head: 'range', align: right },
    ],
    [
      ...bySource.map(({ name, outside, inside, inTotal }) => [
        `${printable(name)}${inTotal ? '' : ', other hours'}`,
        dBA(outside),
        dBA(inside),
        range(inside),
      ]),
      ...(fan ? [own(`fan, ${setting ?? 'on'}`, fan)] : []),
      ...(airInDucts && counts(airInDucts, total) ? [own('air in ducts', airInDucts)] : []),
      ...(airAtOpenings && counts(airAtOpenings, total) ? [own('air at its openings', airAtOpenings)] : []),
      ...equipment.map(({ name, atMicrophone }) => own(`${name}, inside`, atMicrophone)),
      ...(roomTone?.selfNoiseDbZ == null
        ? []
        : [['microphone itself, unweighted', '', bandLevel(roomTone.selfNoiseDbZ), '']]),
    ],
  );
}

/** Sounds further below the total than this, dB, aren't worth a line. */
const lostInTheRest = 20;

function counts(sound: LevelTotals, total: LevelTotals): boolean {
  return (sound.dBA?.value ?? 0) > (total.dBA?.value ?? 0) - lostInTheRest;
}

function worstHours({ hours, total }: Noise): string {
  if (hours === null) return '';
  // Hours for which the text names no sound outside are unknown, not quiet.
  const known = hours.states.filter(({ sources }) => sources.length > 0);
  const quietest = Math.min(...known.map(({ dBA }) => dBA?.value ?? Number.POSITIVE_INFINITY));
  if (!Number.isFinite(quietest) || total.dBA === null || quietest >= total.dBA.value) return ' in the loudest hours';
  return ` in the loudest hours, ${formatNumber(quietest)} dBA in the quietest`;
}

/** The octave that misses the target most, or comes nearest, and what brings it. */
export function worstBand(booth: BoothResult, target: Target, nominalHz: readonly number[]): string | undefined {
  if (target === undefined) return undefined;
  const levels = octaveLevels(booth.noise.total.byBand);
  let worst = -1;
  let margin = Number.POSITIVE_INFINITY;
  levels.forEach((level, octave) => {
    const allowed = target.octaves[octave];
    if (level === null || allowed === undefined || allowed - level >= margin) return;
    margin = allowed - level;
    worst = octave;
  });
  if (worst < 0) return undefined;
  const verdict = margin >= 0 ? `${formatNumber(margin)} dB to spare` : `${formatNumber(-margin)} dB too much`;
  const by = strongestAt(booth, worst, nominalHz);
  return `Worst band against ${target.label}: ${bandName(octaveCentres[worst] ?? 0)} Hz, ${bandLevel(levels[worst])} dB where ${formatNumber(target.octaves[worst] ?? 0)} are allowed, ${verdict}${by}`;
}

function strongestAt(booth: BoothResult, octave: number, nominalHz: readonly number[]): string {
  const loudest = booth.noise.bySource
    .filter(({ inTotal }) => inTotal)
    .map((source) => ({ source, level: octaveLevels(source.inside.byBand)[octave] ?? Number.NEGATIVE_INFINITY }))
    .sort((a, b) => b.level - a.level)[0];
  const own = loudestOwn(booth.noise, octave);
  if (own !== undefined && !(own.level <= (loudest?.level ?? Number.NEGATIVE_INFINITY))) return `; mostly ${own.name}`;
  if (loudest === undefined || !Number.isFinite(loudest.level)) return '';
  const [first] = pathShares(booth, loudest.source, nominalHz)
    .map((share) => ({ share, here: share.byOctave[octave] ?? 0 }))
    .sort((a, b) => b.here - a.here);
  if (first === undefined) return `; mostly ${loudest.source.name}`;
  return `; mostly ${loudest.source.name}, ${shareText(first.here)} of it through the ${pathWords(first.share)}`;
}

/** The loudest sound of the booth itself in an octave. */
function loudestOwn({ fan, airInDucts, airAtOpenings, equipment }: Noise, octave: number) {
  const named = [
    ...(fan ? [{ name: 'the fan', levels: fan }] : []),
    ...(airInDucts ? [{ name: 'the air in the ducts', levels: airInDucts }] : []),
    ...(airAtOpenings ? [{ name: 'the air at its openings', levels: airAtOpenings }] : []),
    ...equipment.map(({ name, atMicrophone }) => ({ name: `${name}, inside`, levels: atMicrophone })),
  ];
  return named
    .map(({ name, levels }) => ({ name, level: octaveLevels(levels.byBand)[octave] ?? Number.NEGATIVE_INFINITY }))
    .filter(({ level }) => Number.isFinite(level))
    .sort((a, b) => b.level - a.level)[0];
}

/** `Fan off 26 dBA NC 21, low 26 dBA NC 21, high 27 dBA NC 22.` */
export function fanSettings({ bySetting, fanParts, fan }: Noise): string | undefined {
  if (bySetting.length < 2) return undefined;
  const figures = new Set(bySetting.map(({ total }) => `${bandLevel(total.dBA?.value)} ${total.nc?.text ?? ''}`));
  if (figures.size === 1) return `The fan makes no difference that counts${fanWay(fanParts, fan)}`;
  const words = bySetting.map(
    ({ setting, total, session }) =>
      `${setting} ${rangedText(total.dBA, 'dBA')}${total.nc === null ? '' : ` ${total.nc.text}`}${session ? ' (as planned)' : ''}`,
  );
  return `With the fan ${words.join(', ')}${fanWay(fanParts, fan)}`;
}

/** Says when a fan is heard by the room rather than along its duct. */
function fanWay(parts: Noise['fanParts'], fan: LevelTotals | null): string {
  if (fan === null) return '';
  const energy = (way: 'duct' | 'room') =>
    parts
      .filter((part) => part.way === way)
      .flatMap(({ byBand }) => byBand.map((level, band) => (level === null ? 0 : weightedEnergy(level, band))))
      .reduce((sum, each) => sum + each, 0);
  return energy('room') > energy('duct')
    ? '. Of the fan more comes by the room and the walls than along its duct: its open side wants a lined box too'
    : '';
}

function weightedEnergy(level: number, band: number): number {
  return energyOf(level + frequencyWeighting('A', thirdOctaveBands[band]?.exact ?? 1000));
}

/** `Hours: 22:00 to 06:00 meets NC 15; the session, 13:00 to 15:00, misses NC 15`. */
export function hoursWords({ hours }: Noise): string | undefined {
  if (hours === null) return undefined;
  const words = [
    ...hours.requirements.map((each) => each.words),
    ...(hours.session === null ? [] : [hours.session.words]),
  ];
  return words.length === 0 ? undefined : `Hours: ${words.join('; ')}`;
}

/** What is not predicted, by reason: sounds with the same reason in one line. */
function notPredictedWords({ notPredicted }: Noise, style: TextStyle): string[] {
  const reasons = [...new Set(notPredicted.map(({ why }) => why))];
  return reasons.map((why) => {
    const names = notPredicted.filter((each) => each.why === why).map(({ name }) => name);
    return `Not predicted: ${names.join(', ')}: ${firstClause(why, style)}`;
  });
}

/** The whole reason in the full report, its first sentence in the short one. */
function firstClause(why: string, style: TextStyle): string {
  return style.detail === 'full' ? why : (why.split(/[;.] /)[0] ?? why);
}

function lowWords({ lowBands }: BoothResult, style: TextStyle): string {
  if (style.detail === 'full') return lowBands.text;
  return `Low bands: up to 100 Hz a figure is good to ±${formatNumber(lowBands.halfWidthTo100HzDb)} dB, in the middle bands to ±${formatNumber(lowBands.halfWidthMidDb)} dB`;
}
