import { pointsPerPiece } from '../math/integrate-adaptive.js';
import type { Pieces } from '../math/pieces.js';
import type { Peak, PreparedStack } from './prepared-stack.js';

/** Nodes of a first pass that only has to notice a peak: it turns the phase by half a turn, however narrow it is. */
const fewestNodes = 10;
const stepsPerRadian = 6;
/** Half-width from which on a peak is no more than a bend of the curve. */
const wide = 0.2;
/** Half-width below which a peak is taken as this wide; it would hold no power worth counting. */
const narrowest = 1e-10;
/** Peaks nearer than so many half-widths share a piece; so does one with the end of the range. */
const together = 2.5;
/** The outer nodes of a stretched piece lie further apart than those of a plain one. */
const sparser = 1.2;

/**
 * Fills `pieces` with those of the range of cos(theta) whose nodes are dense enough to notice every peak, denser towards grazing incidence, and
 * which are stretched around the peaks that are known.
 */
export function putAnglePieces(pieces: Pieces, stack: PreparedStack, from: number, peaks: readonly Peak[]): void {
  pieces.clear();
  const nodes = fewestNodes + stepsPerRadian * stack.turn;
  const kept = peaks.length === 0 ? peaks : distinct(peaks, from);
  if (kept.length === 0) {
    const count = Math.ceil(nodes / pointsPerPiece);
    for (let i = 0; i < count; i++) {
      pieces.addPlain(from + (1 - from) * warp(i / count), from + (1 - from) * warp((i + 1) / count));
    }
    return;
  }
  const length = 1 - from;
  // Share of the nodes of a plain scan that lie below a cosine.
  const nodesBelow = (cosine: number) => (nodes * (Math.sqrt(0.16 + (2.4 * (cosine - from)) / length) - 0.4)) / 1.2;
  const add = ({ place, halfWidth }: Peak, lower: number, upper: number) => {
    if ((nodesBelow(upper) - nodesBelow(lower)) * sparser > pointsPerPiece) {
      const middle = (lower + upper) / 2;
      add({ place, halfWidth }, lower, middle);
      add({ place, halfWidth }, middle, upper);
    } else pieces.addAround(place, halfWidth, lower, upper);
  };
  let lower = from;
  for (let i = 0; i < kept.length; i++) {
    const peak = kept[i]!;
    const upper = i + 1 < kept.length ? (peak.place + kept[i + 1]!.place) / 2 : 1;
    const reach = together * peak.halfWidth;
    if (peak.place - lower > reach && upper - peak.place > reach) {
      add(peak, lower, peak.place);
      add(peak, peak.place, upper);
    } else add(peak, lower, upper);
    lower = upper;
  }
}

/** Sharp peaks inside the range in rising order, of neighbours that overlap the narrower one. */
function distinct(peaks: readonly Peak[], from: number): Peak[] {
  const kept: Peak[] = [];
  for (const { place, halfWidth } of peaks.toSorted((a, b) => a.place - b.place)) {
    if (!(halfWidth < wide) || place < from || place > 1) continue;
    const peak = { place, halfWidth: Math.max(halfWidth, narrowest) };
    const before = kept.at(-1);
    if (before === undefined || place - before.place > together * Math.max(before.halfWidth, peak.halfWidth)) {
      kept.push(peak);
    } else if (peak.halfWidth < before.halfWidth) kept[kept.length - 1] = peak;
  }
  return kept;
}

function warp(share: number): number {
  return share * (0.4 + 0.6 * share);
}
