import type { PreparedStack, WaveState } from './prepared-stack.js';

/** Follows a wave through the stack at cos(theta) = `cosine` and leaves the waves at the near side in `state`. */
export type Follow = (cosine: number, state: WaveState) => void;

/** A peak narrower than the scan by this factor or more gets intervals of its own. */
const sharpness = 3;
/** Growth of the intervals on both flanks of a peak. */
const growth = 10;

/**
 * Splits the range of cos(theta) where the response of a stack has peaks, so that the integration cannot step over one.
 *
 * Every resonance of the stack (mass-air-mass, the n half-waves across a cavity, coincidence) is a near-zero of the
 * incident wave that goes with a transmitted wave of 1. The range is scanned finely enough for the waves across the
 * depth; a change of sign of the imaginary part or a sharp minimum of the size marks a resonance, which is then closed in
 * on. Around it the intervals grow from the half-width of the peak to the step of the scan.
 */
export function angleBreaks(
  stack: PreparedStack,
  from: number,
  to: number,
  follow: Follow,
  state: WaveState,
): number[] {
  const steps = 24 + Math.ceil(4 * stack.depthPhase);
  const places = new Float64Array(steps + 1);
  const re = new Float64Array(steps + 1);
  const im = new Float64Array(steps + 1);
  const incident = (cosine: number): { re: number; im: number } => {
    follow(cosine, state);
    return {
      re: (cosine * state.pressureRe + stack.airImpedance * state.velocityRe) / cosine,
      im: (cosine * state.pressureIm + stack.airImpedance * state.velocityIm) / cosine,
    };
  };
  for (let i = 0; i <= steps; i++) {
    // Somewhat denser towards grazing incidence, where the mass-air-mass resonance goes at high frequencies.
    const share = i / steps;
    places[i] = Math.max(from + (to - from) * share * (0.4 + 0.6 * share), 1e-6);
    const value = incident(places[i]!);
    re[i] = value.re;
    im[i] = value.im;
  }
  const breaks = new Set<number>([from, to]);
  const mark = (peak: number, halfWidth: number, lower: number, upper: number) => {
    breaks.add(peak);
    for (let reach = 2 * halfWidth; reach < upper - peak; reach *= growth) breaks.add(peak + reach);
    for (let reach = 2 * halfWidth; reach < peak - lower; reach *= growth) breaks.add(peak - reach);
    breaks.add(lower);
    breaks.add(upper);
  };
  const sizeAt = (i: number) => re[i]! * re[i]! + im[i]! * im[i]!;
  for (let i = 0; i < steps; i++) {
    if (im[i]! * im[i + 1]! >= 0) continue;
    const root = closeInOnSign(incident, places[i]!, im[i]!, places[i + 1]!, im[i + 1]!);
    const step = places[i + 1]! - places[i]!;
    const smallest = Math.min(sizeAt(i), sizeAt(i + 1));
    if (root.re * root.re * sharpness * sharpness > smallest) continue;
    const halfWidth = Math.abs(root.re / root.slope);
    if (halfWidth > 0 && halfWidth < step) mark(root.place, halfWidth, places[i]!, places[i + 1]!);
  }
  for (let i = 1; i < steps; i++) {
    const here = sizeAt(i);
    const before = sizeAt(i - 1);
    const after = sizeAt(i + 1);
    if (here >= before || here > after || im[i - 1]! * im[i]! < 0 || im[i]! * im[i + 1]! < 0) continue;
    if (Math.min(before, after) < sharpness * here) continue;
    const valley = closeInOnMinimum(incident, places[i - 1]!, places[i + 1]!);
    const step = places[i + 1]! - places[i - 1]!;
    const halfWidth = step * Math.sqrt(valley.size / Math.max(before, after));
    if (halfWidth > 0 && halfWidth < step) mark(valley.place, halfWidth, places[i - 1]!, places[i + 1]!);
  }
  return Array.from(breaks).sort((a, b) => a - b);
}

type Incident = (cosine: number) => { re: number; im: number };

/** Root of the imaginary part by false position with the Illinois rule, the real part there and the slope. */
function closeInOnSign(incident: Incident, a: number, atA: number, b: number, atB: number) {
  let [low, lowValue, high, highValue] = [a, atA, b, atB];
  let [place, value] = [a, { re: 0, im: atA }];
  let slope = (atB - atA) / (b - a);
  let keptSide = 0;
  for (let pass = 0; pass < 60; pass++) {
    const [before, valueBefore] = [place, value.im];
    place = (low * highValue - high * lowValue) / (highValue - lowValue);
    value = incident(place);
    if (place !== before && value.im !== valueBefore) slope = (value.im - valueBefore) / (place - before);
    if (Math.abs(value.im) <= 0.05 * Math.abs(value.re) || high - low < 1e-13) break;
    if (value.im * lowValue > 0) {
      [low, lowValue] = [place, value.im];
      if (keptSide === 1) highValue /= 2;
      keptSide = 1;
    } else {
      [high, highValue] = [place, value.im];
      if (keptSide === -1) lowValue /= 2;
      keptSide = -1;
    }
  }
  return { place, re: value.re, slope };
}

/** Smallest size between two places by golden section. */
function closeInOnMinimum(incident: Incident, from: number, to: number): { place: number; size: number } {
  const ratio = (Math.sqrt(5) - 1) / 2;
  const size = (x: number) => {
    const value = incident(x);
    return value.re * value.re + value.im * value.im;
  };
  let [low, high] = [from, to];
  let left = high - ratio * (high - low);
  let right = low + ratio * (high - low);
  let atLeft = size(left);
  let atRight = size(right);
  for (let pass = 0; pass < 30 && high - low > 1e-9; pass++) {
    if (atLeft < atRight) {
      high = right;
      right = left;
      atRight = atLeft;
      left = high - ratio * (high - low);
      atLeft = size(left);
    } else {
      low = left;
      left = right;
      atLeft = atRight;
      right = low + ratio * (high - low);
      atRight = size(right);
    }
  }
  return { place: (low + high) / 2, size: Math.min(atLeft, atRight) };
}
