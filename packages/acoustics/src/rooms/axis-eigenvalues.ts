import type { Complex } from '../math/complex.js';

/**
 * Eigenvalues of the air between two parallel walls of given admittance.
 *
 * Equation: (w - b0 b1) sin(z)/z = (b0 + b1) cos(z), w = z^2 = (k_x L)^2, b = j k L beta for each wall, beta the specific
 * admittance of the wall (of the air over that of the wall, both characteristic), k = omega / c.
 * In w the equation is entire, so that the mode of order 0 needs no special case.
 * Method: each root is followed from hard walls, w = (n pi)^2, while both admittances grow in proportion, by Newton's
 * iteration from the slope of the path; a step is halved when the iteration strays from the prediction.
 * Units: dimensionless; time convention exp(+j omega t). The result holds w of the orders `first` .. `last`, each as real
 * and imaginary part.
 * Source: derived from the wave equation with locally reacting walls (as in P. M. Morse and K. U. Ingard, Theoretical
 * Acoustics, from memory).
 * Valid: every finite admittance of passive walls. Where two roots meet exactly the orders of the two are a convention.
 */
export function axisEigenvalues(b0: Complex, b1: Complex, first: number, last: number): Float64Array {
  if (first === 0) return fromLowest(b0, b1, last + 1).slice(0, 2 * (last + 1));
  const found = new Float64Array(2 * (last - first + 1));
  for (let order = first; order <= last; order++) followRoot(b0, b1, order, found, 2 * (order - first));
  return found;
}

type Known = { readonly admittances: readonly number[]; readonly roots: Float64Array };

/**
 * Roots from order 0 on, each in the place that its admittances point to: several places in one box, and boxes that differ
 * in the walls of another axis, ask for the same ones.
 */
const known: (Known | undefined)[] = new Array(1024);
const bits = new Float64Array(4);
const words = new Uint32Array(bits.buffer);

function fromLowest(b0: Complex, b1: Complex, count: number): Float64Array {
  bits[0] = b0.re;
  bits[1] = b0.im;
  bits[2] = b1.re;
  bits[3] = b1.im;
  let place = 0;
  for (let word = 0; word < 8; word++) place = Math.imul(place ^ words[word]!, 0x9e3779b1) ^ (place >>> 15);
  place = (place ^ (place >>> 17)) & (known.length - 1);
  const found = known[place];
  const same = found?.admittances.every((value, index) => value === bits[index]) === true;
  const have = same ? found!.roots.length / 2 : 0;
  if (have >= count) return found!.roots;
  const roots = new Float64Array(2 * count);
  if (have > 0) roots.set(found!.roots);
  for (let order = have; order < count; order++) followRoot(b0, b1, order, roots, 2 * order);
  known[place] = { admittances: [b0.re, b0.im, b1.re, b1.im], roots };
  return roots;
}

/** `Math.hypot` without its care for overflow, in a fraction of its time. */
function size(re: number, im: number): number {
  return Math.sqrt(re * re + im * im);
}

/** Value, slope in w and slope in s of the equation, all over the same positive factor: [re, im] each. */
const work = new Float64Array(6);

function followRoot(b0: Complex, b1: Complex, order: number, out: Float64Array, at: number): void {
  const productRe = b0.re * b1.re - b0.im * b1.im;
  const productIm = b0.re * b1.im + b0.im * b1.re;
  const sumRe = b0.re + b1.re;
  const sumIm = b0.im + b1.im;
  let re = (order * Math.PI) ** 2;
  let im = 0;
  let s = 0;
  let step = 1;
  while (s < 1) {
    step = Math.min(step, 1 - s);
    evaluate(re, im, s, productRe, productIm, sumRe, sumIm);
    const square = work[2]! * work[2]! + work[3]! * work[3]!;
    const slopeRe = -(work[4]! * work[2]! + work[5]! * work[3]!) / square;
    const slopeIm = -(work[5]! * work[2]! - work[4]! * work[3]!) / square;
    const guessRe = re + step * slopeRe;
    const guessIm = im + step * slopeIm;
    let nextRe = guessRe;
    let nextIm = guessIm;
    let settled = false;
    for (let turn = 0; turn < 8 && !settled; turn++) {
      evaluate(nextRe, nextIm, s + step, productRe, productIm, sumRe, sumIm);
      const slope = work[2]! * work[2]! + work[3]! * work[3]!;
      const moveRe = (work[0]! * work[2]! + work[1]! * work[3]!) / slope;
      const moveIm = (work[1]! * work[2]! - work[0]! * work[3]!) / slope;
      nextRe -= moveRe;
      nextIm -= moveIm;
      settled = size(moveRe, moveIm) <= 1e-11 * (1 + size(nextRe, nextIm));
      if (!Number.isFinite(nextRe + nextIm)) break;
    }
    // Neighbouring roots lie about 2 pi |z| apart in w: a small part of that keeps to one path.
    const near = 0.15 * (1 + Math.sqrt(size(nextRe, nextIm)));
    const strayed = size(nextRe - guessRe, nextIm - guessIm);
    const leap = size(nextRe - re, nextIm - im);
    const smallest = 1e-5;
    if ((settled && strayed < near && leap < 10 * near) || step < smallest) {
      re = nextRe;
      im = nextIm;
      s += step;
      if (strayed < near / 4) step *= 2;
    } else step /= 2;
  }
  out[at] = re;
  out[at + 1] = im;
}

function evaluate(re: number, im: number, s: number, pRe: number, pIm: number, sumRe: number, sumIm: number): void {
  const productRe = s * s * pRe;
  const productIm = s * s * pIm;
  let sRe: number;
  let sIm: number;
  let cRe: number;
  let cIm: number;
  // (cos z - sin z / z) / (2 w)
  let dRe: number;
  let dIm: number;
  if (re * re + im * im < 1e-6) {
    sRe = 1 - re / 6 + (re * re - im * im) / 120;
    sIm = -im / 6 + (re * im) / 60;
    cRe = 1 - re / 2 + (re * re - im * im) / 24;
    cIm = -im / 2 + (re * im) / 12;
    dRe = -1 / 6 + re / 60;
    dIm = im / 60;
  } else {
    const size = Math.sqrt(re * re + im * im);
    let zRe = Math.sqrt((size + Math.abs(re)) / 2);
    let zIm = Math.abs(im) / (2 * zRe);
    if (re < 0) [zRe, zIm] = [zIm, zRe];
    if (im < 0) zIm = -zIm;
    // Hyperbolic functions over exp(|Im z|), so that a strongly damped root does not overflow.
    const decay = Math.exp(-2 * Math.abs(zIm));
    const cosh = (1 + decay) / 2;
    const sinh = (Math.sign(zIm) * (1 - decay)) / 2;
    const sin = Math.sin(zRe);
    const cos = Math.cos(zRe);
    const sinRe = sin * cosh;
    const sinIm = cos * sinh;
    cRe = cos * cosh;
    cIm = -sin * sinh;
    sRe = (sinRe * zRe + sinIm * zIm) / size;
    sIm = (sinIm * zRe - sinRe * zIm) / size;
    const twice = 2 * size * size;
    dRe = ((cRe - sRe) * re + (cIm - sIm) * im) / twice;
    dIm = ((cIm - sIm) * re - (cRe - sRe) * im) / twice;
  }
  const offRe = re - productRe;
  const offIm = im - productIm;
  work[0] = offRe * sRe - offIm * sIm - s * (sumRe * cRe - sumIm * cIm);
  work[1] = offRe * sIm + offIm * sRe - s * (sumRe * cIm + sumIm * cRe);
  work[2] = sRe + offRe * dRe - offIm * dIm + (s / 2) * (sumRe * sRe - sumIm * sIm);
  work[3] = sIm + offRe * dIm + offIm * dRe + (s / 2) * (sumRe * sIm + sumIm * sRe);
  work[4] = -2 * s * (pRe * sRe - pIm * sIm) - (sumRe * cRe - sumIm * cIm);
  work[5] = -2 * s * (pRe * sIm + pIm * sRe) - (sumRe * cIm + sumIm * cRe);
}
