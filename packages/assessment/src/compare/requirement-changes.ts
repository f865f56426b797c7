import type { RequirementResult } from '../result/result-document.js';
import type { JudgedSide, RequirementChange, RequirementTurn } from './comparison-document.js';
import type { Renaming } from './renaming.js';
import { differs, stepsBetween } from './smallest-steps.js';

/** Lost first, then gained, then what is asked no longer or newly, then margins by how far they moved. */
const order: readonly RequirementTurn[] = ['lost', 'gained', 'other', 'dropped', 'added', 'worse', 'better'];

/** What became of every requirement; those that stayed as they were are left out. */
export function requirementChanges(
  old: readonly RequirementResult[],
  now: readonly RequirementResult[],
  renaming: Renaming,
): RequirementChange[] {
  const changes = pairs(old, now, renaming).flatMap(([before, after]) => {
    const turn = turnOf(before, after);
    const one = after ?? before;
    if (turn === undefined || one === undefined) return [];
    const limitChanged = before !== undefined && after !== undefined && differs(before.limit, after.limit);
    const change: RequirementChange = {
      turn,
      kind: one.kind,
      booth: one.booth,
      unit: one.unit,
      old: before === undefined ? null : sideOf(before),
      new: after === undefined ? null : sideOf(after),
      limitChanged,
      steps: marginSteps(before, after, one.unit),
    };
    return [change];
  });
  return changes.toSorted((a, b) => order.indexOf(a.turn) - order.indexOf(b.turn) || (b.steps ?? 0) - (a.steps ?? 0));
}

/** How far the margin moved, in smallest steps; null where one side has none. */
function marginSteps(
  old: RequirementResult | undefined,
  now: RequirementResult | undefined,
  unit: string,
): number | null {
  const scale = Math.max(Math.abs(old?.value?.value ?? 0), Math.abs(now?.value?.value ?? 0));
  const [before, after] = [old?.margin ?? null, now?.margin ?? null];
  if (before === null || after === null) return null;
  return stepsBetween(scale, scale + Math.abs(after - before), unit);
}

type Pair = readonly [RequirementResult | undefined, RequirementResult | undefined];

/** By their text, then by what is asked of which booth in which unit: the limit may have moved. */
function pairs(
  old: readonly RequirementResult[],
  now: readonly RequirementResult[],
  renaming: Renaming,
): readonly Pair[] {
  const free = new Set(now);
  const found = new Map<RequirementResult, RequirementResult>();
  const take = (fits: (a: RequirementResult, b: RequirementResult) => boolean) => {
    for (const before of old) {
      if (found.has(before)) continue;
      const after = [...free].find((one) => one.booth === renaming.booth(before.booth) && fits(before, one));
      if (after === undefined) continue;
      found.set(before, after);
      free.delete(after);
    }
  };
  take((before, after) => renaming.words(before.text) === after.text);
  take(
    (before, after) =>
      before.kind === after.kind &&
      before.unit === after.unit &&
      askedOf(renaming.words(before.text)) === askedOf(after.text),
  );
  take((before, after) => before.kind === after.kind && before.unit === after.unit);
  return [
    ...old.map((before): Pair => [before, found.get(before)]),
    ...[...free].map((after): Pair => [undefined, after]),
  ];
}

/** The line without its figures. */
function askedOf(text: string): string {
  return text.replace(/-?\d+(\.\d+)?/g, '#');
}

function sideOf(result: RequirementResult): JudgedSide {
  const { text, verdict, value, limit, margin } = result;
  return { text, verdict, value: value?.value ?? null, limit, margin, atLeast: result.atLeast ?? false };
}

function turnOf(
  before: RequirementResult | undefined,
  after: RequirementResult | undefined,
): RequirementTurn | undefined {
  if (before === undefined) return 'added';
  if (after === undefined) return 'dropped';
  if (before.verdict === 'met' && after.verdict !== 'met') return 'lost';
  if (before.verdict !== 'met' && after.verdict === 'met') return 'gained';
  if (before.verdict !== after.verdict) return 'other';
  if (before.margin !== null && after.margin !== null && differs(before.margin, after.margin)) {
    const isWorse = after.margin < before.margin;
    // What is only a lower bound may be as much worse as nobody knows: no step nearer, and no start of one away.
    return (isWorse ? before.atLeast : after.atLeast) ? 'other' : isWorse ? 'worse' : 'better';
  }
  const moved = differs(before.limit, after.limit) || differs(before.value?.value ?? null, after.value?.value ?? null);
  return moved ? 'other' : undefined;
}
