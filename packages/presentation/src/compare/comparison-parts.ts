import type { ComparisonDocument, Effect, FactChange, JudgedSide, RequirementChange } from '@boothwright/assessment';
import { formatFrequency } from '../numbers/format-frequency.js';
import { decimalsToTell, formatDifference, formatQuantity } from '../numbers/format-quantity.js';

/** A part of a comparison, the same for text and Markdown. */
export type ComparisonPart =
  | {
      readonly heading: string;
      readonly head: readonly string[];
      readonly rows: readonly (readonly string[])[];
      /** What is counted and not told. */
      readonly keptBack?: string;
    }
  | { readonly heading: string; readonly lines: readonly string[] };

/** In short, effects below this many smallest steps are counted and not told. */
const leastSteps = 0.5;
/** In short, more rows are counted and not told. */
const mostRows = 20;

/** What is told of a comparison, verdicts first. `full` keeps back nothing. */
export function comparisonParts(comparison: ComparisonDocument, full: boolean): ComparisonPart[] {
  const { facts, findings, cautions, renamed } = comparison;
  const finding = ({ message }: { readonly message: string }) => message;
  const hazard = (one: { readonly hazard: string; readonly number: string | null }) =>
    one.number === null ? one.hazard : `${one.hazard}: ${one.number}`;
  const parts: ComparisonPart[] = [
    requirementsPart(comparison, full),
    { heading: 'Changed in the text', lines: facts.map(factLine) },
    effectsPart(comparison, full),
    { heading: 'By band', lines: bandLines(comparison, full) },
    { heading: 'Findings that are new', lines: findings.gained.map(finding) },
    { heading: 'Findings that are gone', lines: findings.lost.map(finding) },
    {
      heading: 'Findings with other figures',
      lines: findings.changed.map((one) => `${finding(one.new)} (before: ${finding(one.old)})`),
    },
    { heading: 'Hazards that are new', lines: cautions.gained.map(hazard) },
    { heading: 'Hazards that are not told any more', lines: cautions.lost.map(hazard) },
    {
      heading: 'Hazards with other figures',
      lines: cautions.changed.map((one) => `${hazard(one.new)} (before: ${hazard(one.old)})`),
    },
    {
      heading: 'Names that changed',
      lines: renamed.map(({ kind, old, new: now }) => `${kind} ${old} is called ${now}`),
    },
    { heading: 'What could not be read', lines: unreadLines(comparison) },
  ];
  const changed = new Set(['Findings with other figures', 'Hazards with other figures']);
  return parts.filter((part) => {
    if (!full && changed.has(part.heading)) return false;
    return 'rows' in part ? part.rows.length > 0 || part.keptBack !== undefined : part.lines.length > 0;
  });
}

/** What is kept back, and how the command tells it. */
export function keptBackWords(keptBack: string | undefined): string | undefined {
  return keptBack === undefined ? undefined : `${keptBack}; --full and --format json tell all.`;
}

/** The answer in a sentence. */
export function comparisonHeadline({ requirements, sameFacts, sameEffect, effects }: ComparisonDocument): string {
  if (sameEffect) return sameFacts ? 'No difference.' : 'The text differs; it has no effect on what is predicted.';
  const count = (turn: RequirementChange['turn']) => requirements.filter((one) => one.turn === turn).length;
  const words = (number: number, what: string) =>
    number === 0 ? [] : [`${number} ${number === 1 ? 'requirement' : 'requirements'} ${what}`];
  const told = [
    ...words(
      count('lost'),
      `that ${count('lost') === 1 ? 'was' : 'were'} met ${count('lost') === 1 ? 'is' : 'are'} not any more`,
    ),
    ...words(count('gained'), `${count('gained') === 1 ? 'is' : 'are'} met now`),
    ...words(count('dropped'), `${count('dropped') === 1 ? 'is' : 'are'} not asked any more`),
    ...words(count('added'), `${count('added') === 1 ? 'is' : 'are'} new`),
  ];
  if (told.length > 0) return `${told.join('; ')}.`;
  return effects.length === 0 ? 'No verdict changes.' : 'No verdict changes; figures do.';
}

const turnWords: Readonly<Record<RequirementChange['turn'], string>> = {
  lost: 'LOST',
  gained: 'GAINED',
  other: 'changed',
  dropped: 'dropped',
  added: 'added',
  worse: 'worse',
  better: 'better',
};

/** True where the same line is asked of several booths, so that a row must say of which. */
function severalBooths({ requirements }: ComparisonDocument): boolean {
  return new Set(requirements.flatMap(({ booth }) => booth ?? [])).size > 1;
}

/** Every verdict that turned and every margin that moved by as much as matters; the others are counted. */
function requirementsPart(comparison: ComparisonDocument, full: boolean): ComparisonPart {
  const { requirements } = comparison;
  const told = requirements.filter((one) => full || !hardlyMoves(one));
  const rest = requirements.length - told.length;
  const several = severalBooths(comparison);
  const part = {
    heading: 'Requirements',
    head: ['', 'requirement', 'old', 'new', ''],
    rows: told.map((one) => requirementRow(one, several)),
  };
  if (rest === 0) return part;
  const words = `${rest} ${told.length > 0 ? 'more ' : ''}${rest === 1 ? 'keeps its verdict and hardly moves' : 'keep their verdicts and hardly move'}`;
  return { ...part, keptBack: words };
}

/** A verdict stays, the line asks the same, and the margin moves by less than what is told of figures. */
function hardlyMoves({ turn, limitChanged, steps }: RequirementChange): boolean {
  return (turn === 'worse' || turn === 'better') && !limitChanged && steps !== null && steps < leastSteps;
}

function requirementRow(
  { turn, old, new: now, unit, booth, limitChanged }: RequirementChange,
  isOneOfSeveral: boolean,
): string[] {
  const text = (side: JudgedSide | null) => side?.text.replace(/^require\s+/, '') ?? '';
  const was = limitChanged ? ` (was ${text(old)})` : '';
  return [
    turnWords[turn],
    `${text(now ?? old)}${was}${isOneOfSeveral && booth !== null ? ` in ${booth}` : ''}`,
    ...valuePair(old?.value ?? null, now?.value ?? null, unit, old?.atLeast, now?.atLeast),
    verdictWords(now ?? old, unit, turn),
  ];
}

function verdictWords(side: JudgedSide | null, unit: string, turn: RequirementChange['turn']): string {
  if (side === null || turn === 'dropped') return '';
  if (side.verdict === 'not-assessed') return 'not assessed';
  if (side.margin === null) return side.verdict;
  const by = formatDifference(side.margin, unit);
  if (side.verdict === 'missed') return `missed by ${side.atLeast ? 'at least ' : ''}${by}`;
  return side.margin === 0 ? 'met exactly' : `met with ${by} to spare`;
}

/** `booth alcove, door entry: gap threshold 0.3 mm -> 3 mm`. */
export function factLine({ place, what, old, new: now }: FactChange): string {
  const head = place === '' ? '' : `${place}: `;
  const name = what === '' ? '' : `${what} `;
  if (old === null) return `${head}${name}${now ?? ''} is new`;
  if (now === null) return `${head}${name}${old} is gone`;
  return `${head}${name}${old} -> ${now}`;
}

function effectsPart({ effects }: ComparisonDocument, full: boolean): ComparisonPart {
  const told = full ? effects : effects.filter(({ steps }) => steps === null || steps >= leastSteps).slice(0, mostRows);
  const rest = effects.length - told.length;
  const rows = told.map((one) => [
    `${one.of}: ${one.what}`,
    ...valuePair(one.old, one.new, one.unit),
    effectDifference(one),
    one.turn ?? '',
  ]);
  const head = ['', 'old', 'new', 'change', ''];
  const heading = 'What it does, largest first';
  return rest > 0
    ? {
        heading,
        head,
        rows,
        keptBack: `${rest} smaller ${rest === 1 ? 'difference' : 'differences'} of figures`,
      }
    : { heading, head, rows };
}

/** `+62 kg`; empty where one side is not known. */
export function effectDifference({ old, new: now, unit }: Effect): string {
  return old === null || now === null ? '' : `${now > old ? '+' : '-'}${differenceText(now - old, unit)}`;
}

function differenceText(difference: number, unit: string): string {
  return unit === 'points' || unit === 'count'
    ? String(Math.abs(Math.round(difference)))
    : formatDifference(difference, unit);
}

function valuePair(
  old: number | null,
  now: number | null,
  unit: string,
  ...atLeast: (boolean | undefined)[]
): [string, string] {
  const extra = old === null || now === null ? 0 : decimalsToTell(old, now, unit);
  const bare = unit === 'points' || unit === 'count' ? '' : unit;
  const write = (value: number | null, least: boolean | undefined) =>
    value === null ? '–' : `${least ? '≥ ' : ''}${formatQuantity(value, bare, extra)}`;
  return [write(old, atLeast[0]), write(now, atLeast[1])];
}

function bandLines({ bands }: ComparisonDocument, full: boolean): string[] {
  return bands
    .filter(({ steps }) => full || steps === null || steps >= leastSteps)
    .map(({ of, what, unit, largestHz, hz, old, new: now, turn }) => {
      if (largestHz === null) return `${of}: ${what} is known in other bands`;
      const at = hz.indexOf(largestHz);
      const [before, after] = valuePair(old[at] ?? null, now[at] ?? null, unit);
      return `${of}: ${what}, most at ${formatFrequency(largestHz)}: ${before} -> ${after}${turn === null ? '' : `, ${turn}`}`;
    });
}

function unreadLines(comparison: ComparisonDocument): string[] {
  return [comparison.old, comparison.new].flatMap(({ name, unread }) =>
    unread.map((one) => `${name}: ${one.part} ${one.name ?? ''}`.trimEnd().concat(`: ${one.message}`)),
  );
}

/** `main:booth.booth, variant night`. */
export function sideName({ name, variant }: ComparisonDocument['old']): string {
  return variant === null ? name : `${name}, variant ${variant}`;
}
