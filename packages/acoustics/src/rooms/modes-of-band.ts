import type { Air } from '../air/air-properties.js';
import { axisEigenvalues } from './axis-eigenvalues.js';
import { type BoxDimensions, type BoxPoint, listWalls, requireBox, requireInside } from './box-geometry.js';
import { requireAdmittances, type WallAdmittances } from './require-admittance.js';
import { requirePositive } from './require-positive.js';

/** A mode as one band drives and hears it. */
export type BandMode = {
  readonly order: readonly [number, number, number];
  /** Hz, with the walls as they are at the middle of the band */
  readonly hz: number;
  /** The pressure falls as exp(-damping t), 1/s. */
  readonly damping: number;
  /** Energy at the receiver that a steady noise of the band leaves in it, over that of the strongest mode, 0..1. */
  readonly share: number;
};

/** How many frequencies of the band stand for it. */
const steps = 8;

/**
 * Modes of a box with the energy that noise of a band stores in each, from a source to a receiver.
 *
 * Equation: k_n^2 = sum over axes w_n / L^2, w_n of `axisEigenvalues` with the walls and the wavenumber at the middle of
 * the band; f_n = Re(c k_n / 2 pi), delta = c Im k_n; energy |psi(r0) psi(r) / Lambda|^2 times the mean over the band of
 * 1 / |k_n^2 - k^2|^2, times the share of it that a filter of the band lets through when the mode rings at its own
 * frequency: 1 / (1 + ((f - f0) / (B/2))^6), B the width of the band.
 * With the walls frozen at one frequency the modes need no search in the complex plane, which loses some near |beta| = 1.
 * Units: m, Hz, 1/s. Modes whose share is below `least` are left out; strongest first.
 * Source: derived, locally reacting walls; the filter is the third-order Butterworth of `filterBand`.
 * Valid: for modes in and near the band; one far from it is only rough, and its share is small.
 * Errors: ArgumentError for a side, place, frequency or admittance that can't be.
 */
export function modesOfBand(
  size: BoxDimensions,
  source: BoxPoint,
  receiver: BoxPoint,
  band: { readonly lower: number; readonly exact: number; readonly upper: number },
  walls: WallAdmittances,
  least: number,
  air: Air,
): BandMode[] {
  requireBox(size);
  requireInside('source', source, size);
  requireInside('receiver', receiver, size);
  requirePositive('middle of the band', band.exact, 'Hz');
  const list = listWalls(requireAdmittances(walls));
  const perHz = (2 * Math.PI) / air.soundSpeed;
  const k = band.exact * perHz;
  // Modes an octave above the band take a hundredth of what one inside does.
  const upTo = 2 * band.upper * perHz;
  const axes = size.map((side, axis) => {
    const turn = k * side;
    const b0 = { re: -turn * list[2 * axis]!.im, im: turn * list[2 * axis]!.re };
    const b1 = { re: -turn * list[2 * axis + 1]!.im, im: turn * list[2 * axis + 1]!.re };
    const last = Math.floor((upTo * side) / Math.PI) + 1;
    const values = axisEigenvalues(b0, b1, 0, last);
    return Array.from({ length: last + 1 }, (_, order) => ({
      order,
      re: values[2 * order]! / side ** 2,
      im: values[2 * order + 1]! / side ** 2,
      weight: weightOf(values[2 * order]!, values[2 * order + 1]!, b0, source[axis]! / side, receiver[axis]! / side),
    }));
  });
  const [x, y, z] = axes as [(typeof axes)[0], (typeof axes)[0], (typeof axes)[0]];
  const squares = Array.from({ length: steps }, (_, step) => {
    const hz = band.lower * (band.upper / band.lower) ** ((step + 0.5) / steps);
    return (hz * perHz) ** 2;
  });
  // Plain numbers first: most modes take next to nothing of the energy and are never named.
  const found: number[] = [];
  let most = Number.NEGATIVE_INFINITY;
  for (const a of x) {
    for (const b of y) {
      for (const c of z) {
        if (a.order + b.order + c.order === 0) continue;
        const re = a.re + b.re + c.re;
        const im = a.im + b.im + c.im;
        const root = Math.sqrt((Math.sqrt(re * re + im * im) + re) / 2);
        if (!(root > 0) || root > upTo) continue;
        const hz = root / perHz;
        let energy = 0;
        for (let step = 0; step < steps; step++) {
          const apart = re - squares[step]!;
          energy += 1 / (apart * apart + im * im + 1e-300);
        }
        const off = Math.abs(hz - band.exact) / ((band.upper - band.lower) / 2);
        const heard = 1 / (1 + off ** 6);
        const share = (a.weight * b.weight * c.weight * energy * heard) / steps;
        // Not a number wins as with `Math.max`.
        if (!(share <= most)) most = share;
        found.push(a.order, b.order, c.order, hz, Math.max(0, im / (2 * root)) * air.soundSpeed, share);
      }
    }
  }
  const modes: BandMode[] = [];
  for (let at = 0; at < found.length; at += 6) {
    const share = most > 0 ? found[at + 5]! / most : 0;
    if (!(share >= least)) continue;
    const order = [found[at]!, found[at + 1]!, found[at + 2]!] as const;
    modes.push({ order, hz: found[at + 3]!, damping: found[at + 4]!, share });
  }
  return modes.sort((a, b) => b.share - a.share);
}

/** |psi(source) psi(receiver) / norm|^2, sides of one. */
function weightOf(wRe: number, wIm: number, b0: { re: number; im: number }, source: number, receiver: number): number {
  const size = Math.hypot(wRe, wIm);
  const tiny = size < 1e-8;
  const large = Math.sqrt((size + Math.abs(wRe)) / 2);
  const small = tiny ? 0 : Math.abs(wIm) / (2 * large);
  const zRe = tiny ? 1e-4 : wRe >= 0 ? large : small;
  const zIm = tiny ? 0 : (wIm < 0 ? -1 : 1) * (wRe >= 0 ? small : large);
  const zz = zRe * zRe + zIm * zIm;
  const rRe = (b0.re * zRe + b0.im * zIm) / zz;
  const rIm = (b0.im * zRe - b0.re * zIm) / zz;
  // |cos(z x) + r sin(z x)|^2
  const sizeOf = (cRe: number, cIm: number, sRe: number, sIm: number) => {
    const shapeRe = cRe + rRe * sRe - rIm * sIm;
    const shapeIm = cIm + rRe * sIm + rIm * sRe;
    return shapeRe * shapeRe + shapeIm * shapeIm;
  };
  const shape = (place: number) => {
    const cosh = Math.cosh(zIm * place);
    const sinh = Math.sinh(zIm * place);
    const sin = Math.sin(zRe * place);
    const cos = Math.cos(zRe * place);
    return sizeOf(cos * cosh, -sin * sinh, sin * cosh, cos * sinh);
  };
  // The size of the shape integrated over the side by Simpson's rule: near enough for a weight.
  const pieces = 8 * Math.max(1, Math.ceil(zRe / Math.PI));
  let norm = 0;
  // Cosine and sine step by step, by the theorem of addition.
  const stepSin = Math.sin(zRe / pieces);
  const stepCos = Math.cos(zRe / pieces);
  const stepCosh = Math.cosh(zIm / pieces);
  const stepSinh = Math.sinh(zIm / pieces);
  const dcRe = stepCos * stepCosh;
  const dcIm = -stepSin * stepSinh;
  const dsRe = stepSin * stepCosh;
  const dsIm = stepCos * stepSinh;
  let cRe = 1;
  let cIm = 0;
  let sRe = 0;
  let sIm = 0;
  for (let piece = 0; piece <= pieces; piece++) {
    const factor = piece === 0 || piece === pieces ? 1 : piece % 2 === 1 ? 4 : 2;
    norm += (factor * sizeOf(cRe, cIm, sRe, sIm)) / (3 * pieces);
    const nextRe = cRe * dcRe - cIm * dcIm - (sRe * dsRe - sIm * dsIm);
    const nextIm = cRe * dcIm + cIm * dcRe - (sRe * dsIm + sIm * dsRe);
    const sineRe = sRe * dcRe - sIm * dcIm + (cRe * dsRe - cIm * dsIm);
    const sineIm = sRe * dcIm + sIm * dcRe + (cRe * dsIm + cIm * dsRe);
    cRe = nextRe;
    cIm = nextIm;
    sRe = sineRe;
    sIm = sineIm;
  }
  return (shape(source) * shape(receiver)) / norm ** 2;
}
