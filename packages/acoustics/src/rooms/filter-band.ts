import type { Band } from '../bands/bands.js';
import { requireNumber } from '../errors/require-number.js';
import { complex, divide, multiply, scale, squareRoot, subtract } from '../math/complex.js';

/** Order of the low-pass that the filter is made from; the slopes are those that IEC 61260-1 asks for (from memory). */
const prototypeOrder = 3;

/**
 * A recording filtered to one band by a Butterworth band pass, forwards in time.
 *
 * Equation: the third-order Butterworth low-pass carried to the band by s -> (s^2 + W0^2) / (B s) and to samples by the
 * bilinear transform with both edges pre-warped; unit gain at mid-band, -3 dB at the edges.
 * Units: samples in any unit, sample rate Hz, band edges Hz. Result: as many samples.
 * Source: common practice.
 * Valid: the filter rings for about the inverse of its bandwidth; a decay time below about 16 over the bandwidth in Hz
 * (ISO 3382-1, from memory) is that of the filter: 0.18 s in the 125 Hz octave.
 * Errors: ArgumentError for a sample rate of no more than twice the upper edge, or edges out of order.
 */
export function filterBand(
  samples: Float64Array,
  sampleRate: number,
  { lower, upper }: Pick<Band, 'lower' | 'upper'>,
): Float64Array {
  requireNumber('lower edge of the band', lower, { above: 0, unit: 'Hz' });
  requireNumber('upper edge of the band', upper, { above: lower, unit: 'Hz' });
  requireNumber('sample rate', sampleRate, { above: 2 * upper, unit: 'Hz' });
  const twice = 2 * sampleRate;
  const low = twice * Math.tan((Math.PI * lower) / sampleRate);
  const high = twice * Math.tan((Math.PI * upper) / sampleRate);
  const middle = complex(low * high);
  // Digital frequency of the middle of the band, at which the gain is one.
  const turn = 2 * Math.atan(Math.sqrt(low * high) / twice);
  const out = Float64Array.from(samples);
  for (let index = 0; index < prototypeOrder; index++) {
    // Of the poles of the low-pass, one of each pair with the real one: each makes one or two sections.
    const angle = (Math.PI * (2 * index + prototypeOrder + 1)) / (2 * prototypeOrder);
    if (Math.sin(angle) < -1e-9) continue;
    const half = scale(complex(Math.cos(angle), Math.sin(angle)), (high - low) / 2);
    const root = squareRoot(subtract(multiply(half, half), middle));
    const real = Math.sin(angle) < 1e-9;
    const up = { re: half.re + root.re, im: half.im + root.im };
    const down = subtract(half, root);
    // The two roots of the real pole are one section, either a conjugate pair or two real ones.
    if (real) runSection(out, toSamples(up, twice), toSamples(down, twice), turn);
    else
      for (const pole of [up, down]) {
        const z = toSamples(pole, twice);
        runSection(out, z, complex(z.re, -z.im), turn);
      }
  }
  return out;
}

function toSamples(s: { re: number; im: number }, twice: number) {
  return divide(complex(twice + s.re, s.im), complex(twice - s.re, -s.im));
}

/** One section with zeros at 0 Hz and half the sample rate, in place. */
function runSection(
  samples: Float64Array,
  first: { re: number; im: number },
  second: { re: number; im: number },
  turn: number,
): void {
  const a1 = -(first.re + second.re);
  const a2 = first.re * second.re - first.im * second.im;
  const over = Math.hypot(
    1 + a1 * Math.cos(turn) + a2 * Math.cos(2 * turn),
    a1 * Math.sin(turn) + a2 * Math.sin(2 * turn),
  );
  const gain = over / (2 * Math.sin(turn));
  let x1 = 0;
  let x2 = 0;
  let y1 = 0;
  let y2 = 0;
  for (let index = 0; index < samples.length; index++) {
    const x = samples[index]!;
    const y = gain * (x - x2) - a1 * y1 - a2 * y2;
    x2 = x1;
    x1 = x;
    y2 = y1;
    y1 = y;
    samples[index] = y;
  }
}
