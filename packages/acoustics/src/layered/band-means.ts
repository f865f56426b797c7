import { thirdOctaveBands } from '../bands/bands.js';
import { requireNumber } from '../errors/require-number.js';
import { bandSamples } from './band-samples.js';
import { expectConverged } from './diffuse-transmission-loss.js';

/** Transmission coefficients of several paths at one frequency in Hz. */
export type Paths = (hz: number) => { readonly values: readonly number[]; readonly converged: boolean };

/** How finely the bands of a spectrum are followed. */
export type BandSampling = {
  /** Number of `bandSamples` to average; when absent the bands are sampled as finely as the spectrum needs. */
  readonly samplesPerBand?: number;
  /**
   * Error of a band that one interval between two frequencies may cause, as a share of the power in the band;
   * `defaultBandTolerance` when absent. Of no effect with `samplesPerBand`.
   */
  readonly bandTolerance?: number;
};

/** 0.04 dB for one interval. */
export const defaultBandTolerance = 0.01;
/** Bands are halved at most this often. */
const mostHalvings = 5;
/** Keeps the logarithm of a coefficient finite where nothing comes through. */
const smallest = 1e-320;
/** Three points of the Gauss-Legendre rule on 0 .. 1. */
const gaussPlaces = [0.5 - Math.sqrt(0.15), 0.5, 0.5 + Math.sqrt(0.15)] as const;
const gaussWeights = [5 / 18, 8 / 18, 5 / 18] as const;

/**
 * Means of transmission coefficients over the 21 third-octave bands, one row per path.
 *
 * Equation: mean of tau over lg f in the band. Method: the logarithm of tau is followed as a piecewise cubic of lg f
 * through the edges of the bands and one place beyond either end. An interval is halved as long as the cubics through its
 * left and its right neighbours differ by more than `bandTolerance` of the power of the band, which happens at resonances and nowhere else.
 * A spectrum of transmission is a sum over directions and has no features narrower than its damping; see the tests.
 * With `samplesPerBand` the plain mean over that many `bandSamples` is taken instead.
 */
export function bandMeans(paths: Paths, sampling: BandSampling = {}): number[][] {
  const { samplesPerBand, bandTolerance = defaultBandTolerance } = sampling;
  requireNumber('tolerance of a band', bandTolerance, { above: 0, below: 1 });
  return samplesPerBand === undefined ? adaptiveMeans(paths, bandTolerance) : sampledMeans(paths, samplesPerBand);
}

function sampledMeans(paths: Paths, samplesPerBand: number): number[][] {
  const means: number[][] = [];
  thirdOctaveBands.forEach((band, index) => {
    for (const hz of bandSamples(band, samplesPerBand)) {
      const { values, converged } = paths(hz);
      expectConverged(converged, hz);
      values.forEach((value, c) => {
        means[c] ??= thirdOctaveBands.map(() => 0);
        means[c][index]! += value / samplesPerBand;
      });
    }
  });
  return means;
}

function adaptiveMeans(paths: Paths, tolerance: number): number[][] {
  const places: number[] = [];
  const logarithms: number[][] = [];
  const take = (at: number, place: number) => {
    const hz = frequencyAt(place);
    const { values, converged } = paths(hz);
    expectConverged(converged, hz);
    places.splice(at, 0, place);
    logarithms.splice(
      at,
      0,
      values.map((value) => Math.log(Math.max(value, smallest))),
    );
  };
  // One place beyond either end, so that no band is judged from one side only.
  for (let edge = -1; edge <= thirdOctaveBands.length + 1; edge++) take(edge + 1, edge);
  const components = logarithms[0]!.length;
  // Intervals found smooth are looked at again only when a neighbour was not.
  const settled = places.map(() => false);
  const shares: (number[] | undefined)[] = places.map(() => undefined);
  let sums = bandSums(places, logarithms, components, shares);
  for (let halving = 0; halving < mostHalvings; halving++) {
    const rough: number[] = [];
    for (let i = 1; i + 2 < places.length; i++) {
      const width = places[i + 1]! - places[i]!;
      if (settled[i] || width <= 2 ** -mostHalvings) continue;
      if (isRough(places, logarithms, i, sums, shares[i]!, tolerance)) rough.push(i);
      else settled[i] = true;
    }
    if (rough.length === 0) break;
    for (const i of rough.reverse()) {
      take(i + 1, (places[i]! + places[i + 1]!) / 2);
      settled.splice(i + 1, 0, false);
      shares.splice(i + 1, 0, undefined);
      // The cubics around these intervals go through the new place or have moved at the ends.
      shares.fill(undefined, Math.max(0, i - 2), i + 4);
      if (i > 0) settled[i - 1] = false;
      if (i + 2 < settled.length) settled[i + 2] = false;
    }
    sums = bandSums(places, logarithms, components, shares);
  }
  return sums.map((row) => row.map((sum) => (sum > 2 * smallest ? sum : 0)));
}

/** Hz at a place counted in bands from the lower edge of the lowest. */
function frequencyAt(place: number): number {
  const { lower } = thirdOctaveBands[0]!;
  return lower * 10 ** (place / 10);
}

/** Integral of tau over each band, whose width is 1; fills in the shares of the intervals that are missing. */
function bandSums(
  places: readonly number[],
  logarithms: readonly number[][],
  components: number,
  shares: (number[] | undefined)[],
): number[][] {
  const sums: number[][] = [];
  for (let c = 0; c < components; c++) sums.push(thirdOctaveBands.map(() => 0));
  for (let i = 1; i + 2 < places.length; i++) {
    let known = shares[i];
    if (known === undefined) {
      known = [];
      for (let c = 0; c < components; c++) known.push(share(places, logarithms, i, c, centred(places, i)));
      shares[i] = known;
    }
    const band = Math.floor(places[i]!);
    for (let c = 0; c < components; c++) sums[c]![band]! += known[c]!;
  }
  return sums;
}

/** Integral over interval i with the cubic through the four places from `first` on, in Newton's form. */
function share(
  places: readonly number[],
  logarithms: readonly number[][],
  i: number,
  c: number,
  first: number,
): number {
  const from = places[i]!;
  const width = places[i + 1]! - from;
  const [a, b, d, e] = [places[first]!, places[first + 1]!, places[first + 2]!, places[first + 3]!];
  const [atA, atB] = [logarithms[first]![c]!, logarithms[first + 1]![c]!];
  const [atD, atE] = [logarithms[first + 2]![c]!, logarithms[first + 3]![c]!];
  const ab = (atB - atA) / (b - a);
  const bd = (atD - atB) / (d - b);
  const de = (atE - atD) / (e - d);
  const abd = (bd - ab) / (d - a);
  const bde = (de - bd) / (e - b);
  const abde = (bde - abd) / (e - a);
  let sum = 0;
  for (let g = 0; g < 3; g++) {
    const x = from + width * gaussPlaces[g]!;
    sum += gaussWeights[g]! * Math.exp(atA + (x - a) * (ab + (x - b) * (abd + (x - d) * abde)));
  }
  return sum * width;
}

/** First of the four places around interval i. */
function centred(places: readonly number[], i: number): number {
  return Math.min(Math.max(i - 1, 0), places.length - 4);
}

function isRough(
  places: readonly number[],
  logarithms: readonly number[][],
  i: number,
  sums: readonly number[][],
  usual: readonly number[],
  tolerance: number,
): boolean {
  const band = Math.floor(places[i]!);
  // At either end one of them is the usual one, and the other must differ.
  const last = places.length - 4;
  const left = i === places.length - 2 ? last - 1 : Math.max(i - 2, 0);
  const right = i === 0 ? 1 : Math.min(i, last);
  for (let c = 0; c < sums.length; c++) {
    const allowed = tolerance * sums[c]![band]!;
    // Written so that a value that is no number counts as rough.
    if (!(Math.abs(share(places, logarithms, i, c, left) - usual[c]!) <= allowed)) return true;
    if (!(Math.abs(share(places, logarithms, i, c, right) - usual[c]!) <= allowed)) return true;
  }
  return false;
}
