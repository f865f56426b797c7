import type { Air } from '@boothwright/acoustics';
import type { Booth } from '@boothwright/language';
import { faceNames, insideSize } from '../booth/geometry.js';
import type { LoudspeakerResult } from '../result/reflections-result.js';
import { decimals } from '../text/decimals.js';
import { hertz } from '../text/hertz.js';
import { textRange } from '../text/text-range.js';

/**
 * First cancellation of a loudspeaker by the wall nearest to it: f = c / (4 d), the distance a quarter of the wavelength.
 * Units: m, Hz. Source: image of a source in a hard wall, on the line through both (common practice). Valid for a hard wall
 * and sound that goes all round, so below some hundred Hz.
 */
export function loudspeakersOf(booth: Booth, air: Air): LoudspeakerResult[] {
  const [width, depth, height] = insideSize(booth);
  return booth.equipment.flatMap(({ kind, name, title, nameRange, position: { x, y, z } }) => {
    if (kind.value !== 'loudspeaker') return [];
    const distances = {
      left: x.value,
      right: width - x.value,
      front: y.value,
      back: depth - y.value,
      floor: z.value,
      roof: height - z.value,
    };
    const nearest = faceNames.reduce((found, face) => (distances[face] < distances[found] ? face : found));
    const distance = distances[nearest];
    if (!(distance > 0)) return [];
    const hz = air.soundSpeed / (4 * distance);
    const wall = nearest === 'roof' || nearest === 'floor' ? nearest : `${nearest} wall`;
    return [
      {
        name,
        range: textRange(nameRange),
        nearest,
        distanceM: distance,
        firstCancellationHz: hz,
        text: `${title ?? name}, ${decimals(distance, 2)} m from the ${wall}: its sound off that wall cancels it near ${hertz(hz)}`,
      },
    ];
  });
}
