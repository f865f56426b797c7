import type { ResultDocument, VariantResult } from '@boothwright/assessment';
import { newProblems } from '../../moving/new-problems.js';
import { decimalsToTell, formatQuantity } from '../../numbers/format-quantity.js';
import { requirementName, valueText } from '../../numbers/requirement-words.js';
import { displayWidth } from '../display-width.js';
import { printable } from '../printable.js';
import { section } from '../section.js';
import type { TextStyle } from '../text-style.js';
import { textTable } from '../text-table.js';
import { wrapText } from '../wrap-text.js';

/** Variants beside the base: what each changes, and its verdicts. As many columns side by side as the width allows. */
export function variantsSection(result: ResultDocument, style: TextStyle): string | undefined {
  const names = Object.keys(result.variants);
  if (names.length === 0) return undefined;
  const titles = names
    .filter((name) => result.variants[name]?.title)
    .map((name) => wrapText(printable(`${name}: ${result.variants[name]?.title}`), style.width, '  ', '    '));
  const note = wrapText(
    '= as the base. Every figure has a range like that of the base above.',
    style.width,
    '  ',
    '    ',
  );
  const tables: string[] = [];
  let chunk: string[] = [];
  for (const name of names) {
    const wider = [...chunk, name];
    if (chunk.length > 0 && tableWidth(variantTable(result, wider, style)) > style.width) {
      tables.push(variantTable(result, chunk, style));
      chunk = [name];
    } else chunk = wider;
  }
  tables.push(variantTable(result, chunk, style));
  return section(
    'What each variant is worth',
    [titles.join('\n'), ...tables, movingInVariants(result, style), note].filter(Boolean).join('\n\n'),
    style,
  );
}

/** What no longer goes in or up in a variant, among them the same booth in another room. */
function movingInVariants(result: ResultDocument, { width }: TextStyle): string {
  return Object.entries(result.variants)
    .flatMap(([variant, { booths }]) =>
      Object.entries(booths).flatMap(([name, booth]) =>
        newProblems(result.booths[name]?.moving, booth.moving).map(({ text }) =>
          wrapText(printable(`${variant}, no longer fits: ${text}`), width, '  ', '    '),
        ),
      ),
    )
    .join('\n');
}

function tableWidth(table: string): number {
  return Math.max(...table.split('\n').map(displayWidth));
}

function variantTable(result: ResultDocument, names: readonly string[], { detail }: TextStyle): string {
  const variants = names.map((name) => result.variants[name]!);
  const right = 'right' as const;
  return textTable(
    [{ head: '' }, { head: 'base', align: right }, ...names.map((head) => ({ head: printable(head), align: right }))],
    [
      ...requirementRows(result, variants),
      // What is asked for stands among the requirements.
      ...changeRows(variants, detail).filter(
        ([what]) =>
          detail === 'full' || !result.requirements.some(({ kind }) => what?.split(': ')[1]?.startsWith(kind)),
      ),
    ],
  );
}

/** Single bands are in the result document; here they would drown the rest. */
const perBand = /: (transmission loss at |loudest band )/;
/** What the short report shows beside the requirements: the noise, and what it costs in mass and money. */
const inShort = /: (noise inside|mass|cost with reserve)$/;

/** One row per figure that any of the variants changes visibly. */
export function changeRows(variants: readonly VariantResult[], detail: TextStyle['detail']): string[][] {
  const keys = new Map<string, { what: string; unit: string; base: number | null }>();
  for (const { changes } of variants)
    for (const { what, unit, base } of changes)
      if (isShown(what, detail) && !keys.has(`${what} ${unit}`)) keys.set(`${what} ${unit}`, { what, unit, base });
  return [...keys.values()].flatMap(({ what, unit, base }) => {
    const values = variants.map(({ changes }) => {
      const change = changes.find((entry) => entry.what === what && entry.unit === unit);
      return change ? change.variant : base;
    });
    const extra = Math.max(
      0,
      ...values.map((value) => (base === null || value === null ? 0 : decimalsToTell(value, base, unit))),
    );
    const write = (value: number | null) => (value === null ? '–' : formatQuantity(value, unit, Math.min(1, extra)));
    const cells = values.map((value) => (write(value) === write(base) ? '=' : write(value)));
    return cells.every((cell) => cell === '=') ? [] : [[printable(what), write(base), ...cells]];
  });
}

function isShown(what: string, detail: TextStyle['detail']): boolean {
  return detail === 'full' ? !perBand.test(what) : inShort.test(what);
}

/** One row per requirement whose verdict or printed figure differs in a variant. */
export function requirementRows(result: ResultDocument, variants: readonly VariantResult[]): string[][] {
  return result.requirements.flatMap((base) => {
    const found = variants.map(({ requirements }) =>
      requirements.find(({ text, booth }) => text === base.text && booth === base.booth),
    );
    const write = (entry: typeof base | undefined) =>
      entry ? `${words[entry.verdict]} ${entry.value ? valueText(entry) : ''}`.trim() : '–';
    const cells = found.map((entry) => (write(entry) === write(base) ? '=' : write(entry)));
    return cells.every((cell) => cell === '=') ? [] : [[printable(requirementName(base)), write(base), ...cells]];
  });
}

const words = { met: 'met', missed: 'MISSED', 'not-assessed': 'not assessed' } as const;
