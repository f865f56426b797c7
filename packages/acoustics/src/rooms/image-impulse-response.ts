import type { Air } from '../air/air-properties.js';
import { requireNumber } from '../errors/require-number.js';
import { axisImages } from './axis-images.js';
import { type BoxWalls, boxWallNames, listWalls, requireBox, requireInside } from './box-geometry.js';
import type { BoxPath } from './box-modal-transfer.js';
import { requirePositive } from './require-positive.js';

/** Samples on each side over which a delay between two samples is spread. */
const spread = 8;

/**
 * Pressure impulse response between two points of a box by image sources.
 *
 * Equation: h[n] = sum over images prod(R) / d * w(n - d fs / c), w the sinc function under a Hann window of 8 samples on
 * each side.
 * Units: m, real reflection factor of each wall -1..1, sample rate Hz, duration s; result: pressure re the direct sound at
 * 1 m, one unit impulse in. For walls that depend on frequency, make one response per band, with the factors of that
 * band, and filter it (`filterBand`).
 * Source: J. B. Allen and D. A. Berkley, JASA 65, 1979; delay after P. M. Peterson, JASA 80, 1986 (from memory).
 * Valid: as `boxImageTransfer` with one factor for all angles; attenuation of the air is left out.
 * Cost: about 4 pi (c duration)^3 / (3 V) images.
 * Errors: ArgumentError for a side, point, factor, rate or duration that can't be, or points in one place.
 */
export function imageImpulseResponse(
  { size, source, receiver }: BoxPath,
  reflection: BoxWalls<number>,
  sampleRate: number,
  duration: number,
  air: Air,
): Float64Array {
  requireBox(size);
  requireInside('source', source, size);
  requireInside('receiver', receiver, size);
  requirePositive('sample rate', sampleRate, 'Hz');
  requirePositive('duration', duration, 'seconds');
  requirePositive(
    'distance of source and receiver',
    Math.hypot(...size.map((_, axis) => source[axis]! - receiver[axis]!)),
  );
  const factors = listWalls(reflection);
  factors.forEach((value, index) => {
    requireNumber(`reflection factor of ${boxWallNames[index]}`, value, { atLeast: -1, atMost: 1 });
  });
  const count = Math.ceil(duration * sampleRate);
  const response = new Float64Array(count);
  const perMetre = sampleRate / air.soundSpeed;
  const reach = (count + spread) / perMetre;
  const axes = size.map((side, axis) => {
    const images = axisImages(side, source[axis]!, receiver[axis]!, reach);
    const factor = new Float64Array(images.first.length);
    for (let index = 0; index < factor.length; index++) {
      factor[index] = factors[2 * axis]! ** images.first[index]! * factors[2 * axis + 1]! ** images.second[index]!;
    }
    return { distance: images.distance, factor };
  });
  const [x, y, z] = axes as [(typeof axes)[0], (typeof axes)[0], (typeof axes)[0]];
  for (let i = 0; i < x.distance.length; i++) {
    for (let j = 0; j < y.distance.length; j++) {
      const flat = x.distance[i]! ** 2 + y.distance[j]! ** 2;
      if (flat > reach * reach) break;
      const factor = x.factor[i]! * y.factor[j]!;
      for (let l = 0; l < z.distance.length; l++) {
        const distance = Math.sqrt(flat + z.distance[l]! ** 2);
        if (distance > reach) break;
        addDelayed(response, distance * perMetre, (factor * z.factor[l]!) / distance);
      }
    }
  }
  return response;
}

function addDelayed(response: Float64Array, delay: number, amplitude: number): void {
  const whole = Math.floor(delay);
  const part = delay - whole;
  // sin(pi (n - delay)) alternates in sign from sample to sample.
  const wave = Math.sin(Math.PI * part) / Math.PI;
  const first = Math.max(0, whole - spread + 1);
  const last = Math.min(response.length - 1, whole + spread);
  for (let n = first; n <= last; n++) {
    const off = n - delay;
    const sign = (n - whole) % 2 === 0 ? -1 : 1;
    const sinc = Math.abs(off) < 1e-9 ? 1 : (sign * wave) / off;
    response[n] = response[n]! + amplitude * sinc * (0.5 + 0.5 * Math.cos((Math.PI * off) / spread));
  }
}
