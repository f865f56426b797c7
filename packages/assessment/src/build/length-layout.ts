import { solve } from 'yalps';
import { firstFit } from './first-fit.js';

export interface LengthPattern {
  readonly count: number;
  /** m, longest first */
  readonly cuts: readonly number[];
}

export interface LaidLengths {
  readonly patterns: readonly LengthPattern[];
  readonly lengths: number;
  /** No cutting needs fewer. */
  readonly leastLengths: number;
  /** m of pieces longer than the stock, in the order given. */
  readonly tooLong: readonly number[];
}

const perMetre = 10_000;

/** More ways of cutting one length than this are not listed for the solver. */
const mostPatterns = 1_500;

/** Steps of branch and cut; a count and not a time, so that the same parts always give the same list. */
const mostSteps = 60;

/**
 * Sticks off lengths of one size: the cutting stock problem. First the packing library fills lengths one after the other;
 * if that is more than total length over stock length, rounded up, an integer program over all ways of cutting one length
 * looks for fewer, and its relaxation gives a sharper bound. Each cut takes the kerf; the last piece of a length needs none.
 */
export function layOutLengths(pieces: readonly number[], stock: number, kerf: number): LaidLengths {
  const gap = Math.ceil(kerf * perMetre - 1e-6);
  const capacity = Math.floor(stock * perMetre + 1e-6) + gap;
  const sizes = pieces.map((piece) => Math.max(1, Math.round(piece * perMetre)) + gap);
  const tooLong = pieces.filter((_, index) => (sizes[index] as number) > capacity);
  const small = sizes.filter((size) => size <= capacity).sort((a, b) => b - a);
  if (small.length === 0) return { patterns: [], lengths: 0, leastLengths: 0, tooLong };

  const total = small.reduce((sum, size) => sum + size, 0);
  let least = Math.ceil(total / capacity - 1e-9);
  let bars = filled(small, capacity);
  if (bars.length > least) {
    const better = fewest(small, capacity, bars.length);
    if (better !== undefined) {
      least = Math.max(least, better.least);
      if (better.bars !== undefined && better.bars.length < bars.length) bars = better.bars;
    }
  }
  const metres = (size: number) => (size - gap) / perMetre;
  return { patterns: counted(bars.map((bar) => bar.map(metres))), lengths: bars.length, leastLengths: least, tooLong };
}

/** Lengths filled one after the other, the longest pieces first. */
function filled(sizes: readonly number[], capacity: number): number[][] {
  const pieces = sizes.map((width) => ({ width, height: 1, data: undefined }));
  return firstFit(pieces, { width: capacity, height: 1 }, 0, false).map((bin) => bin.rects.map(({ width }) => width));
}

/** Equal ways of cutting together, in the order in which they first occur. */
function counted(bars: readonly (readonly number[])[]): LengthPattern[] {
  const found = new Map<string, { count: number; cuts: number[] }>();
  for (const bar of bars) {
    const cuts = [...bar].sort((a, b) => b - a);
    const key = cuts.join(' ');
    const same = found.get(key);
    if (same === undefined) found.set(key, { count: 1, cuts });
    else same.count += 1;
  }
  return [...found.values()];
}

/** The integer program: how often to use each way of cutting, so that every size comes out often enough. */
function fewest(
  sizes: readonly number[],
  capacity: number,
  atMost: number,
): { least: number; bars: number[][] | undefined } | undefined {
  const demand = new Map<number, number>();
  for (const size of sizes) demand.set(size, (demand.get(size) ?? 0) + 1);
  const distinct = [...demand.keys()];
  const patterns = waysOfCutting(distinct, [...demand.values()], capacity);
  if (patterns === undefined) return undefined;
  const model = {
    direction: 'minimize' as const,
    objective: 'lengths',
    constraints: new Map(distinct.map((size, index) => [`s${index}`, { min: demand.get(size) as number }])),
    variables: patterns.map((pattern, index): [number, [string, number][]] => [
      index,
      [
        ['lengths', 1],
        ...pattern.flatMap((count, size): [string, number][] => (count > 0 ? [[`s${size}`, count]] : [])),
      ],
    ]),
  };
  const relaxed = solve(model);
  if (relaxed.status !== 'optimal') return undefined;
  const least = Math.ceil(relaxed.result - 1e-6);
  if (least >= atMost) return { least, bars: undefined };
  const whole = solve({ ...model, integers: true }, { maxIterations: mostSteps, timeout: Number.POSITIVE_INFINITY });
  if (!Number.isFinite(whole.result)) return { least, bars: undefined };
  const bars: number[][] = [];
  const open = new Map(demand);
  for (const [index, times] of whole.variables) {
    for (let time = 0; time < Math.round(times); time += 1) {
      // A way may yield more of a size than is wanted: the surplus stays offcut.
      const bar = (patterns[index] as readonly number[]).flatMap((count, size) => {
        const length = distinct[size] as number;
        const taken = Math.min(count, open.get(length) as number);
        open.set(length, (open.get(length) as number) - taken);
        return Array<number>(taken).fill(length);
      });
      if (bar.length > 0) bars.push(bar);
    }
  }
  const complete = [...open.values()].every((left) => left === 0);
  return { least, bars: complete ? bars : undefined };
}

/** Every way of cutting one length to which no further piece can be added; undefined when there are too many. */
function waysOfCutting(sizes: readonly number[], demand: readonly number[], capacity: number): number[][] | undefined {
  const found: number[][] = [];
  const smallest = sizes[sizes.length - 1] as number;
  const counts = sizes.map(() => 0);
  const visit = (index: number, left: number): boolean => {
    if (index === sizes.length) {
      const maximal = sizes.every((size, at) => size > left || counts[at] === demand[at]);
      if (maximal) found.push([...counts]);
      return found.length <= mostPatterns;
    }
    const most = Math.min(Math.floor(left / (sizes[index] as number)), demand[index] as number);
    for (let count = most; count >= 0; count -= 1) {
      counts[index] = count;
      if (!visit(index + 1, left - count * (sizes[index] as number))) return false;
    }
    counts[index] = 0;
    return true;
  };
  if (smallest <= 0) return undefined;
  return visit(0, capacity) ? found : undefined;
}
