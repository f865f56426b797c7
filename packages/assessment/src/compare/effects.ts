import type { Effect } from './comparison-document.js';
import { type Figure, turnOf } from './figure.js';
import { differs, stepsBetween } from './smallest-steps.js';

/** Figures of one booth or build-up that differ; one that a side does not have is not known there. */
export function effectsOf(of: string, old: readonly Figure[], now: readonly Figure[]): Effect[] {
  const before = new Map(old.map((figure) => [figure.what, figure]));
  const after = new Map(now.map((figure) => [figure.what, figure]));
  return [...new Set([...before.keys(), ...after.keys()])].flatMap((what): Effect[] => {
    const [one, other] = [before.get(what), after.get(what)];
    const figure = other ?? one;
    if (figure === undefined) return [];
    const { topic, unit, better } = figure;
    // Two figures in different units, such as two currencies, have no difference.
    const comparable = one === undefined || other === undefined || one.unit === other.unit;
    const from = comparable ? (one?.value ?? null) : null;
    const to = other?.value ?? null;
    if (!differs(from, to)) return [];
    const steps = stepsBetween(from, to, unit);
    return [{ of, topic, what, unit, old: from, new: to, turn: turnOf(from, to, better), steps }];
  });
}

/** By their steps; what is known on one side only comes first, as nothing tells how large it is. */
export function largestFirst<T extends { readonly steps: number | null }>(changes: readonly T[]): T[] {
  const size = ({ steps }: T) => steps ?? Number.POSITIVE_INFINITY;
  return [...changes].sort((a, b) => (size(a) === size(b) ? 0 : size(b) - size(a)));
}
