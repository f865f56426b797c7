import type { RequirementResult, ResultDocument } from '@boothwright/assessment';
import { newProblems } from '../moving/new-problems.js';
import { formatFigures } from '../numbers/format-number.js';
import { formatQuantity, isConverted } from '../numbers/format-quantity.js';
import { requirementName, valueText, verdictText } from '../numbers/requirement-words.js';
import { bullets, code, escapeMarkdown, paragraphs, table } from './markdown.js';

/** What a variant makes of the same booths: what it meets, what it misses, and every figure that moves. */
export function variantHover(name: string, results: ResultDocument): string | undefined {
  const variant = results.variants[name];
  if (variant === undefined) return undefined;
  const title = variant.title ? ` ${escapeMarkdown(variant.title)}` : '';
  const figure = (value: number | null, unit: string) => {
    if (value === null) return '–';
    if (isConverted(unit)) return formatQuantity(value, unit);
    return unit === 'NC' ? `NC ${formatFigures(value)}` : `${formatFigures(value)} ${unit}`.trim();
  };
  const turned = turnedRequirements(results.requirements, variant.requirements);
  const problems = problemLines(results, name);
  if (variant.changes.length === 0 && turned.length === 0 && problems.length === 0) {
    return `**${escapeMarkdown(name)}**${title}\n\nChanges nothing that is predicted`;
  }
  return paragraphs(
    `**${escapeMarkdown(name)}**${title}: ${metOf(variant.requirements)} met, ${metOf(results.requirements)} without it`,
    bullets([...turned, ...problems]),
    variant.changes.length > 0 &&
      table(
        ['', `without ${code(name)}`, 'with it'],
        variant.changes.map(({ what, base, variant: changed, unit }) => [
          escapeMarkdown(what),
          figure(base, unit),
          figure(changed, unit),
        ]),
      ),
  );
}

function metOf(requirements: readonly RequirementResult[]): string {
  const met = requirements.filter(({ verdict }) => verdict === 'met').length;
  return `${met} of ${requirements.length} requirements`;
}

/** Requirements whose verdict is another than that of the base. */
function turnedRequirements(base: readonly RequirementResult[], variant: readonly RequirementResult[]): string[] {
  return variant.flatMap((now) => {
    const before = base.find(({ text, booth }) => text === now.text && booth === now.booth);
    if (before === undefined || before.verdict === now.verdict) return [];
    const figures = now.value && before.value ? `, ${figureOf(before)} → ${valueText(now)}` : '';
    return [`${code(requirementName(now))} **${verdictText(now)}**${figures}`];
  });
}

function figureOf({ value, unit }: RequirementResult): string {
  return value ? formatQuantity(value.value, unit) : '–';
}

function problemLines(results: ResultDocument, name: string): string[] {
  return Object.entries(results.variants[name]?.booths ?? {}).flatMap(([booth, { moving }]) => {
    const before = results.booths[booth]?.moving ?? null;
    const solved = before === null || moving === null ? [] : newProblems(moving, before);
    return [
      ...newProblems(before, moving).map(({ text }) => `new: ${escapeMarkdown(text)}`),
      ...solved.map(({ text }) => `no more: ${escapeMarkdown(text)}`),
    ];
  });
}
