import { ArgumentError } from '../errors/argument-error.js';
import { requireNumber } from '../errors/require-number.js';
import { requireOneOf } from '../errors/require-one-of.js';
import {
  type AbsorptionCategory,
  type AbsorptionQuantity,
  type AbsorptionRow,
  absorptionCategories,
  absorptionQuantities,
} from './absorption-row.js';

/** What to look for; an absent field is no condition. */
export type AbsorptionQuery = {
  /** Words that must all occur in name, category or id, in any order; the start of a word is enough. */
  readonly words?: string;
  readonly categories?: readonly AbsorptionCategory[];
  readonly quantities?: readonly AbsorptionQuantity[];
  readonly mounting?: 'A' | 'E400';
  /** m; rows without a stated thickness are left out. */
  readonly thickness?: { readonly atLeast?: number; readonly atMost?: number };
  /** True to leave out rows that are cited from copyrighted tables. */
  readonly openOnly?: boolean;
};

const properties = ['words', 'categories', 'quantities', 'mounting', 'thickness', 'openOnly'] as const;

/**
 * Rows that meet every condition of a query, those with most whole words first, else in the order of the table.
 *
 * Case and accents do not count. Numbers are words: "50" finds "50 mm".
 * Errors: ArgumentError for a thickness that is no number of metres of 0 or more, or a property, category, quantity or
 * mounting that is not known.
 */
export function findAbsorptionRows(rows: readonly AbsorptionRow[], query: AbsorptionQuery): AbsorptionRow[] {
  for (const property of Object.keys(query)) requireOneOf('property of the query', property, properties);
  requireWords('category', query.categories, absorptionCategories);
  requireWords('quantity', query.quantities, absorptionQuantities);
  if (query.mounting !== undefined) requireOneOf('mounting', query.mounting, ['A', 'E400']);
  const { categories, quantities, mounting, thickness, openOnly } = query;
  for (const limit of [thickness?.atLeast, thickness?.atMost]) {
    if (limit !== undefined) requireNumber('thickness', limit, { atLeast: 0, unit: 'metres' });
  }
  const words = wordsOf(query.words ?? '');
  return rows
    .filter(
      (row) =>
        (categories === undefined || categories.includes(row.category)) &&
        (quantities === undefined || quantities.includes(row.quantity)) &&
        (mounting === undefined || row.mounting === mounting) &&
        (thickness === undefined || isWithin(row.thickness, thickness)) &&
        (openOnly !== true || row.provenance.open),
    )
    .map((row) => ({ row, score: scoreOf(words, row) }))
    .filter(({ score }) => score >= 0)
    .sort((a, b) => b.score - a.score)
    .map(({ row }) => row);
}

/** Rejects a list with a word that is not allowed, or a word that is no list. */
function requireWords(what: string, words: unknown, allowed: readonly string[]): void {
  if (words === undefined) return;
  if (!Array.isArray(words)) {
    throw new ArgumentError(`list for ${what}`, words, `a list of some of ${allowed.join(', ')}`);
  }
  for (const word of words) requireOneOf(what, word, allowed);
}

/** How many of the words occur whole; -1 when one does not occur at all. */
function scoreOf(words: readonly string[], row: AbsorptionRow): number {
  const found = wordsOf(`${row.name} ${row.category} ${row.id}`);
  let whole = 0;
  for (const word of words) {
    if (found.includes(word)) whole++;
    else if (!found.some((candidate) => candidate.startsWith(word))) return -1;
  }
  return whole;
}

function wordsOf(text: string): string[] {
  const plain = text.toLowerCase().normalize('NFD').replace(/\p{M}/gu, '');
  return plain.match(/\d+(?:\.\d+)?|\p{L}+/gu) ?? [];
}

function isWithin(
  value: number | undefined,
  { atLeast, atMost }: { readonly atLeast?: number; readonly atMost?: number },
): boolean {
  if (value === undefined) return false;
  return !(atLeast !== undefined && value < atLeast) && !(atMost !== undefined && value > atMost);
}
