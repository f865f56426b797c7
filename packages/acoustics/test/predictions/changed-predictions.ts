import type { PredictedValue } from './prediction.js';

/** Two values are the same prediction up to this share of the larger, or this much near zero. */
export const predictionTolerance = 1e-9;

type Table = Readonly<Record<string, PredictedValue>>;

/** Names whose value is another or is gone. A name that is new is no change. */
export function changedPredictions(before: Table, after: Table): string[] {
  return Object.keys(before)
    .filter((name) => !(name in after) || !same(before[name]!, after[name]!))
    .sort();
}

function same(a: PredictedValue, b: PredictedValue): boolean {
  if (typeof a === 'number' && typeof b === 'number') {
    return a === b || Math.abs(a - b) <= predictionTolerance * Math.max(1, Math.abs(a), Math.abs(b));
  }
  if (Array.isArray(a) && Array.isArray(b)) {
    return a.length === b.length && a.every((value, index) => same(value, b[index]!));
  }
  return a === b;
}

/** The announcement of a change: the text of a changeset. */
export type Changeset = { readonly file: string; readonly text: string };

/**
 * Changed names that no changeset of at least a minor step of the package names between backticks, whole or by the part
 * before the slash.
 */
export function unannounced(
  changed: readonly string[],
  changesets: readonly Changeset[],
  packageName: string,
): string[] {
  const announced = changesets
    .filter(({ text }) => largeEnough(text, packageName))
    .flatMap(({ text }) => [...text.matchAll(/`([^`\n]+)`/g)].map((match) => match[1]!));
  return changed.filter((name) => !announced.includes(name) && !announced.includes(name.split('/')[0]!));
}

function largeEnough(text: string, packageName: string): boolean {
  const head = /^---\n([\s\S]*?)\n---/.exec(text)?.[1] ?? '';
  return head.split('\n').some((line) => {
    const [, name, step] = /^["']?([^"':]+)["']?:\s*(\w+)\s*$/.exec(line) ?? [];
    return name === packageName && (step === 'minor' || step === 'major');
  });
}
