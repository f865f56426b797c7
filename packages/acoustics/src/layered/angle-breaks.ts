import { waveBlock } from './kernel-in-use.js';
import type { PreparedStack } from './prepared-stack.js';
import { blockSize } from './wave-block.js';

/** Follows waves through the stack at the first `count` cosines of the block and leaves there what arrives at the near side. */
export type Follow = (count: number) => void;

/** A minimum that rises by less than this factor to its neighbours is wide enough to need no closing in. */
const sharpness = 3;
/** Grazing incidence itself is a limit that the formulas reach only by division by zero. */
const smallestCosine = 1e-6;
const coincidenceHalvings = 7;
const secantPasses = 25;
const fewestSteps = 32;
/** Nodes of a first pass that only has to notice a peak: it turns the phase by half a turn, however narrow it is. */
const fewestNodes = 14;
const stepsPerRadian = 6;
/** Half-width below which a peak is taken as this wide; it would hold no power worth counting. */
const narrowest = 1e-10;
/** Growth of the intervals on both flanks of a peak. */
const growth = 10;

/**
 * Splits the range of cos(theta) where the response of a stack has peaks, so that the integration cannot step over one.
 *
 * Every resonance of the stack (mass-air-mass, the n half-waves across a cavity, coincidence) is a near-zero of the
 * incident wave that goes with a transmitted wave of 1. The range is scanned finely enough for the waves across the
 * depth; a turn of the phase by more than a right angle or a minimum of the size marks a resonance, which is then closed in
 * on.
 * Around it the intervals grow from the half-width of the peak to a few steps of the scan.
 */
export function angleBreaks(stack: PreparedStack, from: number, to: number, follow: Follow): number[] {
  const places = scanPlaces(stack, from, to);
  const { cosine: blockCosine } = waveBlock();
  const steps = places.length - 1;
  const scan = new Incidents(places.length);
  for (let start = 0; start <= steps; start += blockSize) {
    const count = Math.min(blockSize, places.length - start);
    for (let i = 0; i < count; i++) blockCosine[i] = places[start + i]!;
    follow(count);
    scan.note(stack, count);
  }
  const { re, im } = scan;
  const single = new Incidents(1);
  const incident = (cosine: number): { re: number; im: number } => {
    blockCosine[0] = cosine;
    follow(1);
    single.count = 0;
    single.note(stack, 1);
    return { re: single.re[0]!, im: single.im[0]! };
  };
  const breaks = new Set<number>([from, to]);
  const mark = (peak: number, halfWidth: number, lower: number, upper: number) => {
    breaks.add(peak);
    if (!(halfWidth > 0)) return;
    // The flanks of a peak go on into the neighbouring steps.
    const flank = growth * (upper - lower);
    for (let reach = 2 * Math.max(halfWidth, narrowest); reach < flank; reach *= growth) {
      if (peak + reach < to) breaks.add(peak + reach);
      if (peak - reach > from) breaks.add(peak - reach);
    }
  };
  const sizeAt = (i: number) => re[i]! * re[i]! + im[i]! * im[i]!;
  const turns = (i: number) => re[i]! * re[i + 1]! + im[i]! * im[i + 1]! < 0;
  for (let i = 0; i < steps; i++) {
    if (!turns(i)) continue;
    const root = closeInOnRoot(incident, places[i]!, places[i + 1]!);
    if (root.place > places[i]! && root.place < places[i + 1]!) {
      mark(root.place, root.halfWidth, places[i]!, places[i + 1]!);
    } else {
      mark((places[i]! + places[i + 1]!) / 2, (places[i + 1]! - places[i]!) / 4, places[i]!, places[i + 1]!);
    }
  }
  for (let i = 1; i < steps; i++) {
    const here = sizeAt(i);
    const before = sizeAt(i - 1);
    const after = sizeAt(i + 1);
    if (here >= before || here > after || turns(i - 1) || turns(i)) continue;
    const width = places[i + 1]! - places[i - 1]!;
    if (Math.max(before, after) < sharpness * here) {
      mark(places[i]!, width / 2, places[i - 1]!, places[i + 1]!);
      continue;
    }
    const [lower, upper] = [places[i - 1]!, places[i + 1]!];
    const root = closeInOnRoot(incident, lower, upper);
    if (root.place > lower && root.place < upper) mark(root.place, Math.min(root.halfWidth, width / 2), lower, upper);
    else mark(places[i]!, width / 4, lower, upper);
  }
  return Array.from(breaks).sort((a, b) => a - b);
}

/** Incident waves, times 2, that go with a transmitted wave of 1, in the order in which they were noted. */
export class Incidents {
  // Plain arrays: making a typed one of this size costs more than filling it.
  readonly re: number[] = [];
  readonly im: number[] = [];
  count = 0;

  constructor(readonly capacity: number) {}

  /** Notes those of the first `count` waves of the block for which there is room. */
  note({ airImpedance }: PreparedStack, count: number): void {
    const { cosine, pressureRe, pressureIm, velocityRe, velocityIm } = waveBlock();
    const room = Math.min(count, this.capacity - this.count);
    const { re, im } = this;
    for (let i = 0, at = this.count; i < room; i++, at++) {
      const perCosine = airImpedance / cosine[i]!;
      re[at] = pressureRe[i]! + velocityRe[i]! * perCosine;
      im[at] = pressureIm[i]! + velocityIm[i]! * perCosine;
    }
    this.count += Math.max(0, room);
  }
}

/** Tells whether waves noted in the order of their angles show a resonance that an integration could step over. */
export function hasSharpPeak({ re, im, count }: Incidents): boolean {
  let before = Number.POSITIVE_INFINITY;
  let here = re[0]! * re[0]! + im[0]! * im[0]!;
  for (let i = 0; i + 1 < count; i++) {
    if (!(re[i]! * re[i + 1]! + im[i]! * im[i + 1]! >= 0)) return true;
    const after = re[i + 1]! * re[i + 1]! + im[i + 1]! * im[i + 1]!;
    if (i > 0 && here < before && here <= after && Math.max(before, after) >= sharpness * here) return true;
    before = here;
    here = after;
  }
  return false;
}

/** Pieces whose nodes are dense enough to notice every peak, denser towards grazing incidence. */
export function pieceEdges(stack: PreparedStack, from: number, to: number, nodesPerPiece: number): number[] {
  const pieces = Math.ceil((fewestNodes + stepsPerRadian * stack.turn) / nodesPerPiece);
  const edges: number[] = [];
  for (let i = 0; i <= pieces; i++) edges.push(from + (to - from) * warp(i / pieces));
  return edges;
}

function warp(share: number): number {
  return share * (0.4 + 0.6 * share);
}

/**
 * Places of the scan: some per radian of depth, somewhat denser towards grazing incidence, where the mass-air-mass
 * resonance goes at high frequencies, and closing in on every coincidence, next to which resonances crowd.
 */
function scanPlaces(stack: PreparedStack, from: number, to: number): number[] {
  const steps = fewestSteps + Math.ceil(stepsPerRadian * stack.turn);
  const places: number[] = [];
  for (let i = 0; i <= steps; i++) {
    const share = i / steps;
    places.push(Math.max(from + (to - from) * warp(share), smallestCosine));
  }
  for (const coincidence of stack.coincidences) {
    places.push(coincidence);
    for (let halving = 0; halving < coincidenceHalvings; halving++) {
      const reach = (to - from) / steps / 2 ** halving;
      places.push(coincidence - reach, coincidence + reach);
    }
  }
  return places.filter((place) => place >= smallestCosine && place >= from && place <= to).sort((a, b) => a - b);
}

type Incident = (cosine: number) => { re: number; im: number };

/**
 * Complex root of the incident wave next to the real axis by the secant rule, evaluated on the real axis only: its real
 * part is the place of a resonance, its imaginary part the half-width.
 */
function closeInOnRoot(incident: Incident, from: number, to: number): { place: number; halfWidth: number } {
  let [a, atA] = [from, incident(from)];
  let [b, atB] = [to, incident(to)];
  let place = (from + to) / 2;
  let halfWidth = 0;
  for (let pass = 0; pass < secantPasses; pass++) {
    const slope = { re: (atB.re - atA.re) / (b - a), im: (atB.im - atA.im) / (b - a) };
    const steepness = slope.re * slope.re + slope.im * slope.im;
    if (!(steepness > 0)) break;
    const shift = (atB.re * slope.re + atB.im * slope.im) / steepness;
    halfWidth = Math.abs(atB.im * slope.re - atB.re * slope.im) / steepness;
    place = b - shift;
    if (!(place > from && place < to)) place = (a + b) / 2;
    if (Math.abs(shift) < halfWidth / 4 || place === b || place === a) break;
    [a, atA] = [b, atB];
    [b, atB] = [place, incident(place)];
  }
  return { place, halfWidth };
}
