import type { WaveBlock } from './wave-block.js';

// Sine, cosine and exponential are written out inside the loop below: calls would cost more than the arithmetic, the sine
// and the cosine share their reduction, and the result is the same on every engine. The coefficients are those of the
// Taylor series, carried so far that what is left out is below the rounding of a double over the reduced range.

/** pi/2 in three parts of 33 bits, so that whole multiples of the first two are exact. */
const quarter1 = 1.5707963267341256;
const quarter2 = 6.077100506303966e-11;
const quarter3 = 2.0222662487959506e-21;
const perQuarter = 2 / Math.PI;
/** Beyond this phase the reduction loses digits and the built-in functions take over. */
const longestPhase = 1e5;
/** ln 2 in two parts, the first of 32 bits. */
const ln2High = 0.6931471803691238;
const ln2Low = 1.9082149292705877e-10;
const perLn2 = Math.LOG2E;
const largestExponent = 700;
const powerOffset = 1100;
const powersOfTwo = Float64Array.from({ length: 2 * powerOffset + 1 }, (_, i) => 2 ** (i - powerOffset));

/**
 * Takes the first `count` waves of the block across a fluid layer whose eight constants start at `at`; see `prepareStack`.
 *
 * Equations: k_z^2 = s - t k^2 sin^2(theta); p' = cos(k_z d) p + j P sin(k_z d)/k_z v, v' = j k_z sin(k_z d)/P p +
 * cos(k_z d) v, P = Z_c k_p; all four divided by exp(decay).
 */
export function crossFluid(
  waves: WaveBlock,
  constants: Float64Array,
  at: number,
  wavenumber: number,
  count: number,
): void {
  const { sineSquared, pressureRe, pressureIm, velocityRe, velocityIm } = waves;
  const wholeRe = constants[at]!;
  const wholeIm = constants[at + 1]!;
  const zr = constants[at + 2]!;
  const zi = constants[at + 3]!;
  const thickness = constants[at + 4]!;
  const alongRe = wavenumber * wavenumber * constants[at + 5]!;
  const alongIm = wavenumber * wavenumber * constants[at + 6]!;
  const decay = constants[at + 7]!;
  const productSize = zr * zr + zi * zi;
  const inverseRe = zr / productSize;
  const inverseIm = -zi / productSize;
  const weakened = Math.exp(-2 * decay) / 4;
  for (let i = 0; i < count; i++) {
    const s = sineSquared[i]!;
    const re = wholeRe - alongRe * s;
    const im = wholeIm - alongIm * s;
    const size = Math.sqrt(re * re + im * im) + 1e-300;
    const larger = Math.sqrt((size + Math.abs(re)) * 0.5);
    const smaller = (Math.abs(im) * 0.5) / larger;
    const kr = re >= 0 ? larger : smaller;
    const depth = re >= 0 ? smaller : larger;

    const phase = kr * thickness;
    let sin: number;
    let cos: number;
    if (phase < longestPhase) {
      const turns = Math.floor(phase * perQuarter + 0.5);
      const r = phase - turns * quarter1 - turns * quarter2 - turns * quarter3;
      const r2 = r * r;
      const sinR =
        r +
        r *
          r2 *
          (-1 / 6 +
            r2 *
              (1 / 120 +
                r2 *
                  (-1 / 5040 +
                    r2 * (1 / 362880 + r2 * (-1 / 39916800 + r2 * (1 / 6227020800 + r2 * (-1 / 1307674368000)))))));
      const cosR =
        1 -
        0.5 * r2 +
        r2 *
          r2 *
          (1 / 24 +
            r2 *
              (-1 / 720 +
                r2 *
                  (1 / 40320 +
                    r2 * (-1 / 3628800 + r2 * (1 / 479001600 + r2 * (-1 / 87178291200 + r2 * (1 / 20922789888000)))))));
      const quadrant = turns & 3;
      const swapped = (quadrant & 1) === 1;
      const sinQ = swapped ? cosR : sinR;
      const cosQ = swapped ? sinR : cosR;
      sin = quadrant >= 2 ? -sinQ : sinQ;
      cos = quadrant === 1 || quadrant === 2 ? -cosQ : cosQ;
    } else {
      sin = Math.sin(phase);
      cos = Math.cos(phase);
    }

    const exponent = Math.max(-largestExponent, Math.min(depth * thickness - decay, largestExponent));
    const twos = Math.floor(exponent * perLn2 + 0.5);
    const e = exponent - twos * ln2High - twos * ln2Low;
    const grow =
      0.5 *
      powersOfTwo[twos + powerOffset]! *
      (1 +
        e *
          (1 +
            e *
              (1 / 2 +
                e *
                  (1 / 6 +
                    e *
                      (1 / 24 +
                        e *
                          (1 / 120 +
                            e *
                              (1 / 720 +
                                e *
                                  (1 / 5040 +
                                    e *
                                      (1 / 40320 +
                                        e *
                                          (1 / 362880 +
                                            e * (1 / 3628800 + e * (1 / 39916800 + e * (1 / 479001600)))))))))))));
    const shrink = weakened / grow;
    const cosh = grow + shrink;
    const upward = grow - shrink;
    // The sign of the imaginary part of the root is that of its square.
    const ki = im > 0 ? depth : -depth;
    const sinh = im > 0 ? upward : -upward;

    const cosRe = cos * cosh;
    const cosIm = -sin * sinh;
    const sinRe = sin * cosh;
    const sinIm = cos * sinh;
    // w = j sin(k_z d)/k_z, then the two off-diagonal terms are P w and w k_z^2/P.
    const perSize = 1 / size;
    const wr = (sinRe * ki - sinIm * kr) * perSize;
    const wi = (sinRe * kr + sinIm * ki) * perSize;
    const forwardRe = zr * wr - zi * wi;
    const forwardIm = zr * wi + zi * wr;
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
