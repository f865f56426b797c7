import { blockSize, type WaveBlock } from './wave-block.js';

// Sine, cosine and exponential are written out in the loops below: calls would cost more than the arithmetic, sine and
// cosine share their reduction, and the results are the same on every engine. Each takes the value of the nearest entry of
// a small table and a Taylor series for the rest, carried so far that what is left out is below the rounding of a double.

const stepsPerTurn = 256;
const sines = Float64Array.from({ length: stepsPerTurn }, (_, i) => Math.sin((2 * Math.PI * i) / stepsPerTurn));
const cosines = Float64Array.from({ length: stepsPerTurn }, (_, i) => Math.cos((2 * Math.PI * i) / stepsPerTurn));
const stepsPerRadian = stepsPerTurn / (2 * Math.PI);
/** One step, pi/128, in three parts of 33 bits, so that whole multiples of the first two are exact. */
const step1 = 1.5707963267341256 / 64;
const step2 = 6.077100506303966e-11 / 64;
const step3 = 2.0222662487959506e-21 / 64;
/** Beyond this phase the reduction loses digits and the built-in functions take over. */
export const longestPhase = 1e5;

const stepsPerDoubling = 64;
const fractionsOfTwo = Float64Array.from({ length: stepsPerDoubling }, (_, i) => 2 ** (i / stepsPerDoubling));
const powerOffset = 1100;
const powersOfTwo = Float64Array.from({ length: 2 * powerOffset + 1 }, (_, i) => 2 ** (i - powerOffset));
const stepsPerNeper = stepsPerDoubling * Math.LOG2E;
/** ln 2/64 in two parts, the first of 32 bits. */
const neper1 = 0.6931471803691238 / stepsPerDoubling;
const neper2 = 1.9082149292705877e-10 / stepsPerDoubling;
const largestExponent = 700;

/** Takes the first `count` waves of a block across a fluid layer whose constants start at `at`. */
export type CrossFluid = (constants: readonly number[], at: number, wavenumber: number, count: number) => void;

/**
 * What takes waves across a fluid layer of eight constants: real and imaginary part of s, of P and of t (with d between P
 * and t), and the decay.
 *
 * Equations: k_z^2 = s - t k^2 sin^2(theta); p' = cos(k_z d) p + j P sin(k_z d)/k_z v, v' = j k_z sin(k_z d)/P p +
 * cos(k_z d) v, P = Z_c k_p; all four divided by exp(decay).
 */
export function makeCrossFluid({
  cosine: direction,
  pressureRe,
  pressureIm,
  velocityRe,
  velocityIm,
}: WaveBlock): CrossFluid {
  // The arrays are constants of a closure, not of the module: bundlers turn the latter into variables, and an engine that
  // cannot be sure of an array checks it anew at every access.
  const squareRe = new Float64Array(blockSize);
  const squareIm = new Float64Array(blockSize);
  const perSize = new Float64Array(blockSize);
  const rootRe = new Float64Array(blockSize);
  const rootIm = new Float64Array(blockSize);
  const sine = new Float64Array(blockSize);
  const cosine = new Float64Array(blockSize);
  const growth = new Float64Array(blockSize);

  function crossFluid(constants: readonly number[], at: number, wavenumber: number, count: number): void {
    const thickness = constants[at + 4]!;
    const decay = constants[at + 7]!;
    takeRoots(constants, at, wavenumber * wavenumber, count);
    takeSines(thickness, count);
    takeGrowth(thickness, decay, count);
    combine(constants[at + 2]!, constants[at + 3]!, Math.exp(-2 * decay) / 4, count);
  }

  /** k_z^2, 1/|k_z^2| and the sizes of both parts of k_z. */
  function takeRoots(constants: readonly number[], at: number, traceSquared: number, count: number): void {
    const alongRe = traceSquared * constants[at + 5]!;
    const alongIm = traceSquared * constants[at + 6]!;
    // By what is left at grazing incidence: nothing in free air, where a difference of two large numbers would lose digits.
    // The small number keeps sin(k_z d)/k_z finite there.
    const grazingRe = constants[at]! - alongRe + 1e-150;
    const grazingIm = constants[at + 1]! - alongIm;
    for (let i = 0; i < count; i++) {
      const cosineSquared = direction[i]! * direction[i]!;
      const re = grazingRe + alongRe * cosineSquared;
      const im = grazingIm + alongIm * cosineSquared;
      const size = Math.sqrt(re * re + im * im);
      const larger = Math.sqrt((size + Math.abs(re)) * 0.5);
      const smaller = (Math.abs(im) * 0.5) / larger;
      squareRe[i] = re;
      squareIm[i] = im;
      perSize[i] = 1 / size;
      rootRe[i] = re >= 0 ? larger : smaller;
      rootIm[i] = re >= 0 ? smaller : larger;
    }
  }

  function takeSines(thickness: number, count: number): void {
    for (let i = 0; i < count; i++) {
      const phase = rootRe[i]! * thickness;
      if (!(phase < longestPhase)) {
        sine[i] = Math.sin(phase);
        cosine[i] = Math.cos(phase);
        continue;
      }
      const steps = (phase * stepsPerRadian + 0.5) | 0;
      const r = phase - steps * step1 - steps * step2 - steps * step3;
      const r2 = r * r;
      const sinR = r + r * r2 * (r2 * (1 / 120 - r2 * (1 / 5040)) - 1 / 6);
      const cosR = r2 * (r2 * (1 / 24 - r2 * (1 / 720)) - 0.5);
      const s = sines[steps & (stepsPerTurn - 1)]!;
      const c = cosines[steps & (stepsPerTurn - 1)]!;
      sine[i] = s + (s * cosR + c * sinR);
      cosine[i] = c + (c * cosR - s * sinR);
    }
  }

  /** exp(|Im k_z| d - decay)/2 */
  function takeGrowth(thickness: number, decay: number, count: number): void {
    for (let i = 0; i < count; i++) {
      let exponent = rootIm[i]! * thickness - decay;
      if (!(exponent < largestExponent)) exponent = largestExponent;
      if (exponent < -largestExponent) exponent = -largestExponent;
      const steps = Math.floor(exponent * stepsPerNeper + 0.5) | 0;
      const e = exponent - steps * neper1 - steps * neper2;
      const e2 = e * e;
      const series = 1 + e + e2 * (0.5 + e * (1 / 6) + e2 * (1 / 24 + e * (1 / 120)));
      const whole = powersOfTwo[(steps >> 6) + powerOffset - 1]!;
      growth[i] = whole * fractionsOfTwo[steps & (stepsPerDoubling - 1)]! * series;
    }
  }

  function combine(productRe: number, productIm: number, weakened: number, count: number): void {
    const productSize = productRe * productRe + productIm * productIm;
    const inverseRe = productRe / productSize;
    const inverseIm = -productIm / productSize;
    for (let i = 0; i < count; i++) {
      const re = squareRe[i]!;
      const im = squareIm[i]!;
      const grow = growth[i]!;
      const shrink = weakened / grow;
      const cosh = grow + shrink;
      // The sign of the imaginary part of the root is that of its square.
      const sinh = im > 0 ? grow - shrink : shrink - grow;
      const kr = rootRe[i]!;
      const ki = im > 0 ? rootIm[i]! : -rootIm[i]!;
      const sin = sine[i]!;
      const cos = cosine[i]!;
      const cosRe = cos * cosh;
      const cosIm = -sin * sinh;
      const sinRe = sin * cosh;
      const sinIm = cos * sinh;
      // w = j sin(k_z d)/k_z, then the two off-diagonal terms are P w and w k_z^2/P.
      const wr = (sinRe * ki - sinIm * kr) * perSize[i]!;
      const wi = (sinRe * kr + sinIm * ki) * perSize[i]!;
      const forwardRe = productRe * wr - productIm * wi;
      const forwardIm = productRe * wi + productIm * wr;
      const ur = wr * re - wi * im;
      const ui = wr * im + wi * re;
      const backRe = ur * inverseRe - ui * inverseIm;
      const backIm = ur * inverseIm + ui * inverseRe;
      const pr = pressureRe[i]!;
      const pi = pressureIm[i]!;
      const vr = velocityRe[i]!;
      const vi = velocityIm[i]!;
      pressureRe[i] = pr * cosRe - pi * cosIm + vr * forwardRe - vi * forwardIm;
      pressureIm[i] = pr * cosIm + pi * cosRe + vr * forwardIm + vi * forwardRe;
      velocityRe[i] = vr * cosRe - vi * cosIm + pr * backRe - pi * backIm;
      velocityIm[i] = vr * cosIm + vi * cosRe + pr * backIm + pi * backRe;
    }
  }

  return crossFluid;
}
