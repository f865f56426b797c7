import type { ResultDocument } from '@boothwright/assessment';
import { newProblems } from '../../moving/new-problems.js';
import { formatQuantity } from '../../numbers/format-quantity.js';
import { requirementName } from '../../numbers/requirement-words.js';
import { pairsText, variantEffects } from '../../text/sections/variant-effects.js';
import { changeRows, requirementRows } from '../../text/sections/variants.js';
import { type Block, blocks, figureColumn, heading, list, type ReportSection, table, text } from '../blocks.js';
import type { ReportInput } from '../report-input.js';

/** More side by side do not fit on paper. */
const besideEachOther = 3;
/** Single bands would drown the rest. */
const perBand = /: (transmission loss at |loudest band )/;

/** Variants beside the base, then what each of them changes. */
export function variantsSection({ result }: ReportInput): ReportSection | undefined {
  const names = Object.keys(result.variants);
  if (names.length === 0) return undefined;
  const chunks = Array.from({ length: Math.ceil(names.length / besideEachOther) }, (_, index) =>
    names.slice(index * besideEachOther, (index + 1) * besideEachOther),
  );
  return {
    id: 'variants',
    title: 'Variants beside the base',
    lead: 'What each variant of the text is worth. = as the base; every figure has a range like that of the base.',
    blocks: blocks(
      ...chunks.map((chunk) => besideTable(result, chunk)),
      ...names.flatMap((name) => variantBlocks(result, name)),
    ),
  };
}

function besideTable(result: ResultDocument, names: readonly string[]): Block | undefined {
  const variants = names.flatMap((name) => result.variants[name] ?? []);
  return table(
    `Base and ${names.join(', ')}`,
    [{ head: 'figure' }, figureColumn('base'), ...names.map(figureColumn)],
    [...requirementRows(result, variants), ...changeRows(variants, 'full')],
  );
}

function variantBlocks(result: ResultDocument, name: string): Block[] {
  const variant = result.variants[name];
  if (variant === undefined) return [];
  const { gained, lost, nearer, farther, costs } = variantEffects(result, variant);
  const problems = Object.entries(variant.booths).flatMap(([booth, { moving }]) =>
    newProblems(result.booths[booth]?.moving, moving).map((problem) => problem.text),
  );
  const notAssessed = variant.requirements.filter(({ verdict }) => verdict === 'not-assessed');
  const largest = variant.changes.filter(
    ({ base, variant: value, what }) => !perBand.test(what) && base !== null && value !== null,
  );
  const lines = [
    gained.length > 0 && `Then met: ${pairsText(gained)}`,
    lost.length > 0 && `Then missed: ${pairsText(lost)}`,
    nearer.length > 0 && `Nearer to its limit: ${pairsText(nearer)}`,
    farther.length > 0 && `Farther from its limit: ${pairsText(farther)}`,
    costs.length > 0 && `Besides: ${costs.join(', ')}`,
    notAssessed.length > 0 && `Not assessed in it: ${notAssessed.map(requirementName).join(', ')}`,
    ...onlyIn(variant.findings, result.findings).map((message) => `New: ${message}`),
    ...onlyIn(result.findings, variant.findings).map((message) => `Gone: ${message}`),
    ...problems.map((problem) => `No longer fits: ${problem}`),
  ];
  return blocks(
    heading(variant.title ? `${name}: ${variant.title}` : name),
    text(
      variant.written.length > 0 &&
        `Changes in the text: ${variant.written.map(({ text: line }) => `\`${line.replaceAll('`', "'")}\``).join(', ')}.`,
    ),
    list(lines) ?? text(largest.length > 0 ? largestText(largest) : 'Changes nothing that is predicted.'),
  );
}

type Findings = ResultDocument['findings'];

/** Messages of findings of a kind that the others lack, or have at fewer places. */
function onlyIn(findings: Findings, others: Findings): readonly string[] {
  return findings
    .filter(({ id, range }) => {
      const alike = others.filter((other) => other.id === id);
      const more = findings.filter((each) => each.id === id).length > alike.length;
      return more && !alike.some((other) => other.range.from === range.from && other.range.file === range.file);
    })
    .map(({ message }) => message);
}

type Changes = ResultDocument['variants'][string]['changes'];

function largestText(changes: Changes): string {
  return `Changes only figures that no requirement asks for, such as ${changes
    .slice(0, 3)
    .map(
      ({ what, base, variant, unit }) =>
        `${what}, ${formatQuantity(base ?? 0, unit)} becomes ${formatQuantity(variant ?? 0, unit)}`,
    )
    .join('; ')}.`;
}
