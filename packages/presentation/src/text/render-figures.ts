import type { AssemblyResult, BoothResult, ResultDocument } from '@boothwright/assessment';
import { formatFrequency } from '../numbers/format-frequency.js';
import { formatQuantity } from '../numbers/format-quantity.js';
import { requirementName, valueText, verdictText } from '../numbers/requirement-words.js';
import { printable } from './printable.js';

/**
 * Verdicts and figures, one to a line and without file names, ranges or reasons, so that a tool that compares lines shows what
 * a change of the text does. What stands for what is in `check`.
 */
export function renderFigures(result: ResultDocument): string {
  const { nominalHz } = result.grid;
  const lines = [
    ...result.requirements.map((requirement) =>
      [
        `${requirement.booth ?? 'all'}: require ${requirementName(requirement)}`,
        `${valueText(requirement)} (${verdictText(requirement)})`,
      ].join(': '),
    ),
    ...Object.entries(result.booths).flatMap(([name, booth]) => named(name, boothLines(booth, nominalHz))),
    ...Object.entries(result.assemblies).flatMap(([name, assembly]) => named(name, assemblyLines(assembly, nominalHz))),
    ...result.cautions.map(({ id, severity, hazard }) => `${severity} ${id}: ${hazard}`),
    ...result.findings.map(({ id, message }) => `finding ${id}: ${message}`),
    ...result.unread.map(({ part, name, message }) => `not read: ${part} ${name ?? ''}: ${message}`),
  ];
  return lines.map((line) => `${printable(line.replace(/\s+/g, ' '))}\n`).join('');
}

/** Told in whole points. */
const ratings: ReadonlySet<string> = new Set(['STC', 'Rw']);

type Line = readonly [what: string, value: number | null | undefined, unit: string];

function named(name: string, lines: readonly Line[]): string[] {
  return lines.map(([what, value, unit]) =>
    value === null || value === undefined
      ? `${name}: ${what}: –`
      : `${name}: ${what}: ${formatQuantity(value, unit, ratings.has(unit) ? 0 : 1)}`,
  );
}

function boothLines(
  { noise, ratings, roomSound, air, build, voiceOutside, geometry }: BoothResult,
  hz: readonly number[],
): Line[] {
  return [
    ['noise inside', noise.total.dBA?.value, 'dBA'],
    ['noise criterion inside', noise.total.nc?.value, 'NC'],
    ['room tone', noise.roomTone?.dBFS.value, 'dBFS'],
    ...byOctave('noise inside', noise.total.byBand, 'dB', hz),
    ['STC of the whole booth', ratings.stc, 'STC'],
    ['Rw of the whole booth', ratings.rw, 'Rw'],
    ['voice outside', voiceOutside?.dBA?.value, 'dBA'],
    ['decay, mean of 500 Hz to 2 kHz', roomSound?.mid?.seconds, 's'],
    ...byOctave('decay', roomSound?.decay.map(({ seconds }) => seconds) ?? [], 's', hz),
    ['CO2 at the end of the session', (air?.fanOn ?? air?.fanOff)?.endPpm, 'ppm'],
    ['mass', build.massKg, 'kg'],
    ['floor load', build.floorLoadPa, 'Pa'],
    ['cost with reserve', build.cost?.withReserve, build.cost?.currency ?? ''],
    ['outside width', geometry.outsideM[0], 'm'],
    ['outside depth', geometry.outsideM[1], 'm'],
    ['outside height', geometry.outsideM[2], 'm'],
  ];
}

function assemblyLines(assembly: AssemblyResult, hz: readonly number[]): Line[] {
  return [
    ['STC', assembly.ratings.stc, 'STC'],
    ['Rw', assembly.ratings.rw, 'Rw'],
    ['surface mass', assembly.surfaceMassKgPerM2, 'kg/m2'],
    ['thickness', assembly.thicknessM, 'm'],
    ...byOctave('transmission loss', assembly.transmissionLossDb, 'dB', hz),
  ];
}

const octaves = [63, 125, 250, 500, 1000, 2000, 4000];

/** Third octaves at the centres of the octaves: enough to see where a curve moves. */
function byOctave(what: string, values: readonly (number | null)[], unit: string, hz: readonly number[]): Line[] {
  return octaves.map((centre): Line => [`${what} at ${formatFrequency(centre)}`, values[hz.indexOf(centre)], unit]);
}
