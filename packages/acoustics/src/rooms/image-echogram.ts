import type { Air } from '../air/air-properties.js';
import { requireNumber } from '../errors/require-number.js';
import { axisImages } from './axis-images.js';
import { type BoxWalls, boxWallNames, listWalls, requireBox, requireInside } from './box-geometry.js';
import type { BoxPath } from './box-modal-transfer.js';
import { requireNotNegative, requirePositive } from './require-positive.js';

/**
 * Energy arriving at a receiver in a box over time, in one band, by image sources.
 *
 * Equation: e[n] = sum over the images with floor(d fs / c) = n of prod(1 - a) 10^(-m d / 10) / d^2.
 * Units: m, absorption coefficients 0..1 in the band, attenuation of the air m dB/m, sample rate fs Hz, duration s;
 * result: energy per sample re the direct sound at 1 m. The square of an impulse response without interference.
 * Source: image sources (common practice). The same coefficient serves all angles.
 * Valid: above the Schroeder frequency. In a box with mirror walls the sound along the hard walls outlives Eyring's
 * decay; scattering, which would mix it, is left out.
 * Cost: about 4 pi (c duration)^3 / (3 V) images.
 * Errors: ArgumentError for a side, point, coefficient, rate or duration that can't be.
 */
export function imageEchogram(
  { size, source, receiver }: BoxPath,
  absorption: BoxWalls<number>,
  attenuation: number,
  sampleRate: number,
  duration: number,
  air: Air,
): Float64Array {
  requireBox(size);
  requireInside('source', source, size);
  requireInside('receiver', receiver, size);
  requireNotNegative('attenuation of the air', attenuation, 'dB/m');
  requirePositive('sample rate', sampleRate, 'Hz');
  requirePositive('duration', duration, 'seconds');
  const kept = listWalls(absorption).map((value, index) => {
    requireNumber(`absorption of ${boxWallNames[index]}`, value, { atLeast: 0, atMost: 1 });
    return 1 - value;
  });
  const count = Math.ceil(duration * sampleRate);
  const echogram = new Float64Array(count);
  const perMetre = sampleRate / air.soundSpeed;
  const reach = count / perMetre;
  const axes = size.map((side, axis) => {
    const images = axisImages(side, source[axis]!, receiver[axis]!, reach);
    const energy = images.first.reduce((list, first, index) => {
      list[index] = kept[2 * axis]! ** first * kept[2 * axis + 1]! ** images.second[index]!;
      return list;
    }, new Float64Array(images.first.length));
    return { distance: images.distance, energy };
  });
  const [x, y, z] = axes as [(typeof axes)[0], (typeof axes)[0], (typeof axes)[0]];
  const decay = (attenuation * Math.LN10) / 10;
  for (let i = 0; i < x.distance.length; i++) {
    for (let j = 0; j < y.distance.length; j++) {
      const flat = x.distance[i]! ** 2 + y.distance[j]! ** 2;
      const energy = x.energy[i]! * y.energy[j]!;
      if (flat > reach * reach) break;
      for (let l = 0; l < z.distance.length; l++) {
        const squared = flat + z.distance[l]! ** 2;
        const distance = Math.sqrt(squared);
        const sample = Math.floor(distance * perMetre);
        if (sample >= count) break;
        if (squared > 0)
          echogram[sample] = echogram[sample]! + (energy * z.energy[l]! * Math.exp(-decay * distance)) / squared;
      }
    }
  }
  return echogram;
}
