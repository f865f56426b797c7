import { waveBlock } from './kernel-in-use.js';
import type { Peak, PreparedStack } from './prepared-stack.js';

/** Follows waves through the stack at the first `count` cosines of the block and leaves there what arrives at the near side. */
export type Follow = (count: number) => void;

/** A minimum that rises by less than this factor to its neighbours is wide enough to need no closing in. */
const sharpness = 3;
/** Waves followed for one peak at most. */
const mostPasses = 25;
const newtonSteps = 4;

/**
 * Incident waves in the order of their cosines, by which peaks are noticed.
 *
 * Every resonance of the stack (mass-air-mass, the n half-waves across a cavity, coincidence) is a near-zero of the
 * incident wave that goes with a transmitted wave of 1: a complex zero at q0 + j h shows as a peak of half-width h at q0. With
 * the cosine q as a factor, q p + rho c v, that wave has no poles and no feature narrower than the waves across the
 * depth, so that a parabola through three nodes leads to the zero however narrow the peak is.
 */
export class Incidents {
  // Plain arrays: making a typed one of this size costs more than filling it.
  readonly place: number[] = [];
  readonly re: number[] = [];
  readonly im: number[] = [];
  count = 0;

  /** Notes the first `count` waves of the block. */
  note({ airImpedance }: PreparedStack, count: number): void {
    const { cosine, pressureRe, pressureIm, velocityRe, velocityIm } = waveBlock();
    const { place, re, im } = this;
    for (let i = 0, at = this.count; i < count; i++, at++) {
      const q = cosine[i]!;
      place[at] = q;
      re[at] = q * pressureRe[i]! + airImpedance * velocityRe[i]!;
      im[at] = q * pressureIm[i]! + airImpedance * velocityIm[i]!;
    }
    this.count += count;
  }

  /** Peaks between the noted waves that an integration with these nodes could step over. */
  unresolvedPeaks(stack: PreparedStack, follow: Follow): readonly Peak[] {
    let found = nothing;
    const { place, re, im, count } = this;
    let before = Number.POSITIVE_INFINITY;
    let here = 0;
    let turned = true;
    for (let i = 0; i + 1 < count; i++) {
      const a = re[i]!;
      const b = im[i]!;
      const c = re[i + 1]!;
      const d = im[i + 1]!;
      // Powers are compared without the factor q^2.
      if (i === 0) here = (a * a + b * b) / (place[0]! * place[0]!);
      const after = (c * c + d * d) / (place[i + 1]! * place[i + 1]!);
      const turns = !(a * c + b * d >= 0);
      const isMinimum = !turns && !turned && here < before && here <= after;
      if (turns)
        found = [...found, this.closeInBetween(i, i + 1, i > 0 ? i - 1 : Math.min(i + 2, count - 1), stack, follow)];
      else if (isMinimum && Math.max(before, after) >= sharpness * here) {
        found = [...found, this.closeInBetween(i - 1, i + 1, i, stack, follow)];
      }
      before = here;
      here = after;
      turned = turns;
    }
    return found;
  }

  private closeInBetween(lower: number, upper: number, third: number, stack: PreparedStack, follow: Follow): Peak {
    const { place, re, im } = this;
    const near = [lower, upper, third].map((at) => ({ place: place[at]!, re: re[at]!, im: im[at]! }));
    return closeIn(stack, follow, near);
  }
}

const nothing: readonly Peak[] = [];

type Wave = { readonly place: number; readonly re: number; readonly im: number };

/**
 * The zero of the parabola through three waves, with the wave there in place of the furthest of them, until the parabola
 * foretold it. Where that leads out of the interval it is halved, as long as the wave turns in one of the halves; where it does
 * in neither there is no resonance: its middle is then taken, as wide as it is itself. The first two waves are its ends.
 */
function closeIn(stack: PreparedStack, follow: Follow, near: Wave[]): Peak {
  const single = new Incidents();
  const { cosine } = waveBlock();
  let [lower, upper] = [near[0]!, near[1]!];
  let best: Peak | undefined;
  for (let pass = 0; pass < mostPasses; pass++) {
    const zero = zeroOfParabola(near);
    const inside = zero.place > lower.place && zero.place < upper.place;
    const at = inside ? zero.place : (lower.place + upper.place) / 2;
    best = inside ? zero : undefined;
    if (near.some(({ place }) => place === at)) break;
    cosine[0] = at;
    follow(1);
    single.count = 0;
    single.note(stack, 1);
    const wave = { place: at, re: single.re[0]!, im: single.im[0]! };
    const foretold = Math.hypot(wave.re - zero.re, wave.im - zero.im) <= (zero.slope * zero.halfWidth) / 4;
    let furthest = 0;
    for (let i = 1; i < 3; i++) {
      if (Math.abs(near[i]!.place - at) > Math.abs(near[furthest]!.place - at)) furthest = i;
    }
    near[furthest] = wave;
    if (inside && foretold) {
      const last = zeroOfParabola(near);
      if (last.place > lower.place && last.place < upper.place) best = last;
      break;
    }
    if (isTurned(lower, wave)) upper = wave;
    else if (isTurned(wave, upper)) lower = wave;
  }
  return best ?? { place: (lower.place + upper.place) / 2, halfWidth: (upper.place - lower.place) / 4 };
}

/** True for waves that differ by more than a right angle in their phase, or of which one is no number. */
function isTurned(one: Wave, other: Wave): boolean {
  return !(one.re * other.re + one.im * other.im >= 0);
}

/** Complex zero of the parabola through three waves, with what the parabola is at its real part and how steep. */
function zeroOfParabola([a, b, c]: readonly Wave[]): Peak & { re: number; im: number; slope: number } {
  const [x0, x1, x2] = [a!.place, b!.place, c!.place];
  const abRe = (b!.re - a!.re) / (x1 - x0);
  const abIm = (b!.im - a!.im) / (x1 - x0);
  const abcRe = ((c!.re - b!.re) / (x2 - x1) - abRe) / (x2 - x0);
  const abcIm = ((c!.im - b!.im) / (x2 - x1) - abIm) / (x2 - x0);
  const size = abRe * abRe + abIm * abIm;
  // From the zero of the straight line through two of them.
  let re = x0 - (a!.re * abRe + a!.im * abIm) / size;
  let im = -(a!.im * abRe - a!.re * abIm) / size;
  let slope = Math.sqrt(size);
  for (let step = 0; step < newtonSteps; step++) {
    // Value and slope at the complex place.
    const [fromA, fromB] = [re - x0, re - x1];
    const productRe = fromA * fromB - im * im;
    const productIm = im * (fromA + fromB);
    const valueRe = a!.re + fromA * abRe - im * abIm + productRe * abcRe - productIm * abcIm;
    const valueIm = a!.im + fromA * abIm + im * abRe + productRe * abcIm + productIm * abcRe;
    const slopeRe = abRe + (fromA + fromB) * abcRe - 2 * im * abcIm;
    const slopeIm = abIm + (fromA + fromB) * abcIm + 2 * im * abcRe;
    const slopeSize = slopeRe * slopeRe + slopeIm * slopeIm;
    if (!(slopeSize > 0)) break;
    re -= (valueRe * slopeRe + valueIm * slopeIm) / slopeSize;
    im -= (valueIm * slopeRe - valueRe * slopeIm) / slopeSize;
    slope = Math.sqrt(slopeSize);
  }
  const product = (re - x0) * (re - x1);
  return {
    place: re,
    halfWidth: Math.abs(im),
    re: a!.re + (re - x0) * abRe + product * abcRe,
    im: a!.im + (re - x0) * abIm + product * abcIm,
    slope,
  };
}
