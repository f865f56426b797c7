import type { Air } from '../air/air-properties.js';
import { ArgumentError } from '../errors/argument-error.js';
import { requireNumber } from '../errors/require-number.js';
import { axisEigenvalues } from './axis-eigenvalues.js';
import { type BoxDimensions, listWalls, requireBox } from './box-geometry.js';
import { requireAdmittances, type WallAdmittances } from './require-admittance.js';
import { requirePositive } from './require-positive.js';

/** Places of source and receiver along one axis, m, pair by pair. */
export type AxisPlaces = readonly (readonly [source: number, receiver: number])[];

/**
 * Level at a receiver for a grid of places of source and receiver in a box, by its damped modes.
 *
 * Equation: as `boxModalTransfer`, whose sum factors into the axes; cross modes that fall by more than `nepers` between
 * source and receiver are left out, an error of about e^(-nepers) of the direct sound (5: 0.06 dB; 4: 0.16 dB), and so are
 * reflections of those that fall by twice as much on the way by a wall.
 * Units: m, Hz; `places` the pairs of each axis, all combinations of which are computed; result: 20 lg of the pressure over
 * that of the same source in the free field at 1 m, dB, in the order [frequency][x][y][z] of one flat array.
 * Source: derived, locally reacting walls; see `boxModalTransfer`.
 * Valid: as `boxModalTransfer`; the axis on which source and receiver of the first pairs are farthest apart must keep
 * them at least 0.02 m apart in every pair.
 * Errors: ArgumentError for a side, place, frequency or admittance that can't be.
 */
export function boxTransferGrid(
  size: BoxDimensions,
  places: readonly [AxisPlaces, AxisPlaces, AxisPlaces],
  hz: readonly number[],
  admittances: (hz: number) => WallAdmittances,
  nepers: number,
  air: Air,
): Float64Array {
  requireBox(size);
  requirePositive('nepers', nepers);
  places.forEach((pairs, axis) => {
    for (const place of pairs.flat()) {
      requireNumber('place in the box', place, { atLeast: 0, atMost: size[axis]!, unit: 'metres' });
    }
  });
  const apart = places.map((pairs) => Math.abs(pairs[0]![0] - pairs[0]![1]));
  const along = apart.indexOf(Math.max(...apart)) as 0 | 1 | 2;
  const distance = Math.min(...places[along].map(([source, receiver]) => Math.abs(source - receiver)));
  if (!(distance >= 0.02)) throw new ArgumentError('distance of source and receiver', distance, '0.02 m or more');
  const [one, two] = [0, 1, 2].filter((axis) => axis !== along) as [0 | 1 | 2, 0 | 1 | 2];
  const counts = places.map((pairs) => pairs.length) as [number, number, number];
  const total = counts[0] * counts[1] * counts[2];
  const stride = [counts[1] * counts[2], counts[2], 1] as const;
  const ways = waysOf(places[along], size[along]);
  const straight = shortestTurn(places[along], size[along]);
  const out = new Float64Array(hz.length * total);
  const sum = new Float64Array(2 * total);
  const closed = new Float64Array(2 * counts[along]);
  /** Part of the sum that is the same at every place along the closed axis. */
  const everywhere = new Float64Array(2 * counts[one] * counts[two]);
  hz.forEach((frequency, index) => {
    requirePositive('frequency', frequency, 'Hz');
    const walls = listWalls(requireAdmittances(admittances(frequency)));
    const k = (2 * Math.PI * frequency) / air.soundSpeed;
    const reach = Math.hypot(k, nepers / distance);
    const axes = [one, two].map((axis) =>
      crossModes(k, size[axis], walls[2 * axis]!, walls[2 * axis + 1]!, places[axis], reach),
    ) as [CrossModes, CrossModes];
    const [first, second] = axes;
    const b0 = walls[2 * along]!;
    const b1 = walls[2 * along + 1]!;
    sum.fill(0);
    everywhere.fill(0);
    for (let a = 0; a < first.count; a++) {
      for (let b = 0; b < second.count; b++) {
        if (first.hard[a]! * first.hard[a]! + second.hard[b]! * second.hard[b]! > reach * reach) break;
        const re = k * k - first.squared[2 * a]! - second.squared[2 * b]!;
        const im = -first.squared[2 * a + 1]! - second.squared[2 * b + 1]!;
        // A cross mode that dies before it comes back from a wall is the same wherever the pair stands.
        const direct = straight !== null && re < 0 && Math.sqrt(-re) * straight > 2 * nepers;
        if (direct) closeDirect(re, im, distance, closed);
        else closeAxis(re, im, k, b0.re, b0.im, b1.re, b1.im, size[along], ways, closed);
        for (let i = 0; i < counts[one]; i++) {
          const wRe = first.weight[2 * (a * counts[one] + i)]!;
          const wIm = first.weight[2 * (a * counts[one] + i) + 1]!;
          for (let j = 0; j < counts[two]; j++) {
            const vRe = second.weight[2 * (b * counts[two] + j)]!;
            const vIm = second.weight[2 * (b * counts[two] + j) + 1]!;
            const uRe = wRe * vRe - wIm * vIm;
            const uIm = wRe * vIm + wIm * vRe;
            const at = i * stride[one] + j * stride[two];
            if (direct) {
              const flat = 2 * (i * counts[two] + j);
              everywhere[flat] = everywhere[flat]! + uRe * closed[0]! - uIm * closed[1]!;
              everywhere[flat + 1] = everywhere[flat + 1]! + uRe * closed[1]! + uIm * closed[0]!;
              continue;
            }
            for (let l = 0; l < counts[along]; l++) {
              const to = 2 * (at + l * stride[along]);
              sum[to] = sum[to]! + uRe * closed[2 * l]! - uIm * closed[2 * l + 1]!;
              sum[to + 1] = sum[to + 1]! + uRe * closed[2 * l + 1]! + uIm * closed[2 * l]!;
            }
          }
        }
      }
    }
    for (let i = 0; i < counts[one]; i++) {
      for (let j = 0; j < counts[two]; j++) {
        const flat = 2 * (i * counts[two] + j);
        for (let l = 0; l < counts[along]; l++) {
          const to = 2 * (i * stride[one] + j * stride[two] + l * stride[along]);
          sum[to] = sum[to]! + everywhere[flat]!;
          sum[to + 1] = sum[to + 1]! + everywhere[flat + 1]!;
        }
      }
    }
    for (let place = 0; place < total; place++) {
      const power = sum[2 * place]! ** 2 + sum[2 * place + 1]! ** 2;
      out[index * total + place] = 10 * Math.log10(16 * Math.PI * Math.PI * power);
    }
  });
  return out;
}

/**
 * The shortest way from a source to a wall and on to its receiver, m, over all pairs; null where the pairs are not all as far
 * apart.
 */
function shortestTurn(pairs: AxisPlaces, side: number): number | null {
  const apart = Math.abs(pairs[0]![0] - pairs[0]![1]);
  let turn = Number.POSITIVE_INFINITY;
  for (const [source, receiver] of pairs) {
    if (Math.abs(Math.abs(source - receiver) - apart) > 1e-9) return null;
    turn = Math.min(turn, source + receiver, 2 * side - source - receiver);
  }
  return turn;
}

type CrossModes = {
  readonly count: number;
  /** Wavenumbers with hard walls, 1/m. */
  readonly hard: Float64Array;
  /** Squares of the wavenumbers, 1/m2, re and im. */
  readonly squared: Float64Array;
  /** psi(source) psi(receiver) / Lambda by mode and pair of places, re and im. */
  readonly weight: Float64Array;
};

type Part = { readonly re: number; readonly im: number };

function crossModes(k: number, side: number, beta0: Part, beta1: Part, places: AxisPlaces, reach: number): CrossModes {
  const count = Math.ceil((reach * side) / Math.PI) + 1;
  const turn = k * side;
  const b0 = { re: -turn * beta0.im, im: turn * beta0.re };
  const values = axisEigenvalues(b0, { re: -turn * beta1.im, im: turn * beta1.re }, 0, count - 1);
  const hard = new Float64Array(count);
  const squared = new Float64Array(2 * count);
  const weight = new Float64Array(2 * count * places.length);
  for (let order = 0; order < count; order++) {
    hard[order] = (order * Math.PI) / side;
    const wRe = values[2 * order]!;
    const wIm = values[2 * order + 1]!;
    squared[2 * order] = wRe / side ** 2;
    squared[2 * order + 1] = wIm / side ** 2;
    // Below this the eigenfunction differs from its limit by less than rounding, and dividing by zero is avoided.
    if (wRe * wRe + wIm * wIm < 1e-16) {
      zRe = 1e-4;
      zIm = 0;
    } else rootOf(wRe, wIm);
    const z = { re: zRe, im: zIm };
    const size = z.re * z.re + z.im * z.im;
    const ratio = { re: (b0.re * z.re + b0.im * z.im) / size, im: (b0.im * z.re - b0.re * z.im) / size };
    const norm = normOf(z, ratio);
    const normSize = (norm.re * norm.re + norm.im * norm.im) * side;
    places.forEach(([source, receiver], pair) => {
      const s = shape(z, ratio, source / side);
      const r = shape(z, ratio, receiver / side);
      const re = s.re * r.re - s.im * r.im;
      const im = s.re * r.im + s.im * r.re;
      const at = 2 * (order * places.length + pair);
      weight[at] = (re * norm.re + im * norm.im) / normSize;
      weight[at + 1] = (im * norm.re - re * norm.im) / normSize;
    });
  }
  return { count, hard, squared, weight };
}

/** cos(z x) + ratio sin(z x) */
function shape(z: Part, ratio: Part, x: number): Part {
  const a = z.re * x;
  const e = Math.exp(z.im * x);
  const cosh = (e + 1 / e) / 2;
  const sinh = (e - 1 / e) / 2;
  const sin = Math.sin(a);
  const cos = Math.cos(a);
  const sRe = sin * cosh;
  const sIm = cos * sinh;
  return {
    re: cos * cosh + ratio.re * sRe - ratio.im * sIm,
    im: -sin * sinh + ratio.re * sIm + ratio.im * sRe,
  };
}

/** Integral of the squared shape over the side, per metre of it. */
function normOf(z: Part, ratio: Part): Part {
  const squareRe = ratio.re * ratio.re - ratio.im * ratio.im;
  const squareIm = 2 * ratio.re * ratio.im;
  const size = z.re * z.re + z.im * z.im;
  const e = Math.exp(z.im);
  const cosh = (e + 1 / e) / 2;
  const sinh = (e - 1 / e) / 2;
  const sRe = Math.sin(z.re) * cosh;
  const sIm = Math.cos(z.re) * sinh;
  const cRe = Math.cos(z.re) * cosh;
  const cIm = -Math.sin(z.re) * sinh;
  // ratio sin^2(z) / z
  const ssRe = sRe * sRe - sIm * sIm;
  const ssIm = 2 * sRe * sIm;
  const oneRe = ratio.re * ssRe - ratio.im * ssIm;
  const oneIm = ratio.re * ssIm + ratio.im * ssRe;
  // (1 - ratio^2) sin(2 z) / (4 z), sin(2 z) = 2 sin(z) cos(z)
  const scRe = (sRe * cRe - sIm * cIm) / 2;
  const scIm = (sRe * cIm + sIm * cRe) / 2;
  const twoRe = (1 - squareRe) * scRe + squareIm * scIm;
  const twoIm = (1 - squareRe) * scIm - squareIm * scRe;
  const re = oneRe + twoRe;
  const im = oneIm + twoIm;
  return {
    re: (1 + squareRe) / 2 + (re * z.re + im * z.im) / size,
    im: squareIm / 2 + (im * z.re - re * z.im) / size,
  };
}

let zRe = 0;
let zIm = 0;

/** The principal root into zRe and zIm. */
function rootOf(re: number, im: number): void {
  const size = Math.sqrt(re * re + im * im);
  const large = Math.sqrt((size + Math.abs(re)) / 2);
  const small = large === 0 ? 0 : Math.abs(im) / (2 * large);
  const sign = im < 0 ? -1 : 1;
  zRe = re >= 0 ? large : small;
  zIm = sign * (re >= 0 ? small : large);
}

/** Ways of a wave along an axis, m, one for each pair of places, and room for the wave at their ends. */
type Way = {
  readonly length: readonly number[];
  /** Between neighbours where all are as far apart, shortest first; null otherwise. */
  readonly step: number | null;
  /** exp(-j q length), re and im. */
  readonly wave: Float64Array;
};

/** From source to receiver, from both by the wall at 0, and by the wall at the other end. */
type Ways = { readonly direct: Way; readonly low: Way; readonly high: Way };

function waysOf(pairs: AxisPlaces, side: number): Ways {
  return {
    direct: wayOf(pairs.map(([source, receiver]) => Math.abs(source - receiver))),
    low: wayOf(pairs.map(([source, receiver]) => 2 * Math.min(source, receiver))),
    high: wayOf(pairs.map(([source, receiver]) => 2 * (side - Math.max(source, receiver)))),
  };
}

function wayOf(length: readonly number[]): Way {
  const step = length.length > 1 ? length[1]! - length[0]! : 0;
  const even = length.every((each, index) => Math.abs(each - length[0]! - index * step) < 1e-12);
  return { length, step: even ? step : null, wave: new Float64Array(2 * length.length) };
}

/** Where the ways grow evenly, the wave is turned by the same for each: shortest first, so that no error grows with it. */
function wavesAlong(qRe: number, qIm: number, { length, step, wave: to }: Way): void {
  const count = length.length;
  if (step === null || count < 3) {
    for (let index = 0; index < count; index++) {
      const each = wave(qRe, qIm, length[index]!);
      to[2 * index] = each.re;
      to[2 * index + 1] = each.im;
    }
    return;
  }
  const from = step < 0 ? count - 1 : 0;
  const by = step < 0 ? -2 : 2;
  const turn = wave(qRe, qIm, Math.abs(step));
  const first = wave(qRe, qIm, length[from]!);
  let re = first.re;
  let im = first.im;
  for (let index = 0, at = 2 * from; index < count; index++, at += by) {
    to[at] = re;
    to[at + 1] = im;
    const next = re * turn.re - im * turn.im;
    im = re * turn.im + im * turn.re;
    re = next;
  }
}

/** The closed sum along an axis for every pair of places on it; q^2 given, the root is that of a wave that does not grow. */
function closeAxis(
  squareRe: number,
  squareIm: number,
  k: number,
  b0Re: number,
  b0Im: number,
  b1Re: number,
  b1Im: number,
  side: number,
  ways: Ways,
  out: Float64Array,
): void {
  rootOf(squareRe, squareIm);
  let qRe = zRe;
  let qIm = zIm;
  if (qIm > 0 || (qIm === 0 && qRe < 0)) {
    qRe = -qRe;
    qIm = -qIm;
  }
  if (qRe === 0 && qIm === 0) qRe = 1e-9;
  const r0 = reflection(qRe, qIm, k * b0Re, k * b0Im);
  const r1 = reflection(qRe, qIm, k * b1Re, k * b1Im);
  const round = wave(qRe, qIm, 2 * side);
  const bothRe = r0.re * r1.re - r0.im * r1.im;
  const bothIm = r0.re * r1.im + r0.im * r1.re;
  const backRe = 1 - (bothRe * round.re - bothIm * round.im);
  const backIm = -(bothRe * round.im + bothIm * round.re);
  // 2 j q (1 - r0 r1 e)
  const underRe = -2 * (qIm * backRe + qRe * backIm);
  const underIm = 2 * (qRe * backRe - qIm * backIm);
  const size = underRe * underRe + underIm * underIm;
  const { direct, low, high } = ways;
  wavesAlong(qRe, qIm, direct);
  wavesAlong(qRe, qIm, low);
  wavesAlong(qRe, qIm, high);
  const count = direct.length.length;
  for (let pair = 0; pair < count; pair++) {
    const at = 2 * pair;
    const lowRe = low.wave[at]!;
    const lowIm = low.wave[at + 1]!;
    const highRe = high.wave[at]!;
    const highIm = high.wave[at + 1]!;
    const directRe = direct.wave[at]!;
    const directIm = direct.wave[at + 1]!;
    const lRe = 1 + r0.re * lowRe - r0.im * lowIm;
    const lIm = r0.re * lowIm + r0.im * lowRe;
    const hRe = 1 + r1.re * highRe - r1.im * highIm;
    const hIm = r1.re * highIm + r1.im * highRe;
    const lhRe = lRe * hRe - lIm * hIm;
    const lhIm = lRe * hIm + lIm * hRe;
    const upRe = directRe * lhRe - directIm * lhIm;
    const upIm = directRe * lhIm + directIm * lhRe;
    out[at] = (upRe * underRe + upIm * underIm) / size;
    out[at + 1] = (upIm * underRe - upRe * underIm) / size;
  }
}

/** The same far from both walls: exp(-j q d) / (2 j q). */
function closeDirect(squareRe: number, squareIm: number, distance: number, out: Float64Array): void {
  rootOf(squareRe, squareIm);
  if (zIm > 0) {
    zRe = -zRe;
    zIm = -zIm;
  }
  const size = Math.exp(zIm * distance);
  const waveRe = size * Math.cos(zRe * distance);
  const waveIm = -size * Math.sin(zRe * distance);
  const under = 2 * (zRe * zRe + zIm * zIm);
  // 1 / (2 j q) = (-q_im - j q_re) / (2 |q|^2)
  out[0] = (-waveRe * zIm + waveIm * zRe) / under;
  out[1] = (-waveRe * zRe - waveIm * zIm) / under;
}

/** (q - b) / (q + b) */
function reflection(qRe: number, qIm: number, bRe: number, bIm: number): Part {
  const sumRe = qRe + bRe;
  const sumIm = qIm + bIm;
  const offRe = qRe - bRe;
  const offIm = qIm - bIm;
  const size = sumRe * sumRe + sumIm * sumIm;
  return { re: (offRe * sumRe + offIm * sumIm) / size, im: (offIm * sumRe - offRe * sumIm) / size };
}

/** exp(-j q x) */
function wave(qRe: number, qIm: number, x: number): Part {
  const size = Math.exp(qIm * x);
  return { re: size * Math.cos(qRe * x), im: -size * Math.sin(qRe * x) };
}
