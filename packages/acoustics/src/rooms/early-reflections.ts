import type { Air } from '../air/air-properties.js';
import { requireNumber } from '../errors/require-number.js';
import { axisImages } from './axis-images.js';
import { type BoxWallName, type BoxWalls, boxWallNames, listWalls, requireBox, requireInside } from './box-geometry.js';
import type { BoxPath } from './box-modal-transfer.js';
import { requirePositive } from './require-positive.js';

/** A reflection that arrives soon after the direct sound. */
export type EarlyReflection = {
  /** How often the path meets each wall; walls it does not meet are left out. */
  readonly walls: readonly { readonly wall: BoxWallName; readonly times: number }[];
  readonly order: number;
  /** After the direct sound, s. */
  readonly delay: number;
  /** Longer than the direct path by, m. */
  readonly pathDifference: number;
  /** Re the direct sound, dB; minus infinity where a wall takes all. */
  readonly level: number;
};

/**
 * Reflections in a box up to an order, earliest first, the direct sound left out.
 *
 * Equation: delay (d - d0) / c; level 20 lg(d0 / d) + 10 lg of the product of (1 - a) of the walls met.
 * Units: m, absorption coefficient of each wall 0..1 in one band; results s, m, dB.
 * Source: image sources (common practice).
 * Valid: where the walls are larger than a wavelength; below that the reflection of a wall is no separate event.
 * Errors: ArgumentError for a side, point, coefficient or order that can't be, or points in one place.
 */
export function earlyReflections(
  { size, source, receiver }: BoxPath,
  absorption: BoxWalls<number>,
  largestOrder: number,
  air: Air,
): EarlyReflection[] {
  requireBox(size);
  requireInside('source', source, size);
  requireInside('receiver', receiver, size);
  requireNumber('largest order of reflection', largestOrder, { atLeast: 0, atMost: 20 });
  const direct = Math.hypot(...size.map((_, axis) => source[axis]! - receiver[axis]!));
  requirePositive('distance of source and receiver', direct, 'metres');
  const kept = listWalls(absorption).map((value, index) => {
    requireNumber(`absorption of ${boxWallNames[index]}`, value, { atLeast: 0, atMost: 1 });
    return 1 - value;
  });
  const axes = size.map((side, axis) =>
    axisImages(side, source[axis]!, receiver[axis]!, (2 * largestOrder + 2) * side),
  );
  const found: EarlyReflection[] = [];
  const [x, y, z] = axes as [(typeof axes)[0], (typeof axes)[0], (typeof axes)[0]];
  for (let i = 0; i < x.distance.length; i++) {
    const one = x.first[i]! + x.second[i]!;
    if (one > largestOrder) continue;
    for (let j = 0; j < y.distance.length; j++) {
      const two = one + y.first[j]! + y.second[j]!;
      if (two > largestOrder) continue;
      for (let l = 0; l < z.distance.length; l++) {
        const order = two + z.first[l]! + z.second[l]!;
        if (order === 0 || order > largestOrder) continue;
        const times = [x.first[i]!, x.second[i]!, y.first[j]!, y.second[j]!, z.first[l]!, z.second[l]!];
        const distance = Math.hypot(x.distance[i]!, y.distance[j]!, z.distance[l]!);
        const energy = times.reduce((product, count, wall) => product * kept[wall]! ** count, (direct / distance) ** 2);
        found.push({
          walls: boxWallNames.flatMap((wall, index) => (times[index]! > 0 ? [{ wall, times: times[index]! }] : [])),
          order,
          delay: (distance - direct) / air.soundSpeed,
          pathDifference: distance - direct,
          level: 10 * Math.log10(energy),
        });
      }
    }
  }
  return found.sort((a, b) => a.delay - b.delay);
}
