import type { Air } from '../air/air-properties.js';
import { requireNumber } from '../errors/require-number.js';
import type { Complex } from '../math/complex.js';
import { axisImages } from './axis-images.js';
import { type BoxWalls, boxWallNames, listWalls, requireBox, requireInside } from './box-geometry.js';
import type { BoxPath } from './box-modal-transfer.js';
import { requireNotNegative, requirePositive } from './require-positive.js';

/**
 * How a wall reflects at one frequency: a specific admittance, locally reacting, so that the factor depends on the angle
 * as (cos - beta) / (cos + beta); or one factor for all angles.
 */
export type WallReflection =
  | { readonly kind: 'admittance'; readonly admittance: Complex }
  | { readonly kind: 'factor'; readonly factor: Complex };

/**
 * Transfer from a point source to a receiver in a box by image sources.
 *
 * Equation: H = sum over images R_1 R_2 ... e^(-j k d) / d, one plane-wave reflection factor for every wall met, at the
 * angle at which the straight line from image to receiver meets it.
 * Units: m, Hz, attenuation of the air dB/m as a function of Hz, `reach` the longest path counted, m. The result is the
 * pressure over that of the same source in the free field at 1 m; re and im.
 * Source: J. B. Allen and D. A. Berkley, JASA 65, 1979 (from memory).
 * Valid: exact for hard walls (with or without attenuation of the air). Otherwise a plane-wave factor stands for the
 * reflection of a spherical wave: good for paths of more than about a wavelength that do not graze the walls. The
 * reach must cover the decay: what is left out lies below the direct sound by the decay along it.
 * Cost: grows as the cube of the reach; about 4 pi reach^3 / (3 V) images per frequency.
 * Errors: ArgumentError for a side, point, frequency or reach that can't be, or a factor above 1.
 */
export function boxImageTransfer(
  { size, source, receiver }: BoxPath,
  hz: readonly number[],
  walls: (hz: number) => BoxWalls<WallReflection>,
  attenuation: (hz: number) => number,
  reach: number,
  air: Air,
): Complex[] {
  requireBox(size);
  requireInside('source', source, size);
  requireInside('receiver', receiver, size);
  requirePositive('longest path', reach, 'metres');
  const axes = size.map((side, axis) => axisImages(side, source[axis]!, receiver[axis]!, reach));
  const [x, y, z] = axes as [(typeof axes)[0], (typeof axes)[0], (typeof axes)[0]];
  return hz.map((frequency) => {
    requirePositive('frequency', frequency, 'Hz');
    const loss = attenuation(frequency);
    requireNotNegative('attenuation of the air', loss, 'dB/m');
    const given = listWalls(walls(frequency));
    const table = new Float64Array(18);
    given.forEach((wall, index) => {
      table.set(wallRow(wall, index), 3 * index);
    });
    const k = (2 * Math.PI * frequency) / air.soundSpeed;
    const decay = (loss * Math.LN10) / 20;
    let sumRe = 0;
    let sumIm = 0;
    for (let i = 0; i < x.distance.length; i++) {
      const dx = x.distance[i]!;
      for (let j = 0; j < y.distance.length; j++) {
        const dy = y.distance[j]!;
        const flat = dx * dx + dy * dy;
        if (flat > reach * reach) break;
        for (let l = 0; l < z.distance.length; l++) {
          const dz = z.distance[l]!;
          const d = Math.sqrt(flat + dz * dz);
          if (d > reach) break;
          factor[0] = Math.exp(-decay * d) / d;
          factor[1] = 0;
          reflect(table, 0, dx / d, x.first[i]!, x.second[i]!);
          reflect(table, 6, dy / d, y.first[j]!, y.second[j]!);
          reflect(table, 12, dz / d, z.first[l]!, z.second[l]!);
          const cos = Math.cos(k * d);
          const sin = Math.sin(k * d);
          sumRe += factor[0]! * cos + factor[1]! * sin;
          sumIm += factor[1]! * cos - factor[0]! * sin;
        }
      }
    }
    return { re: sumRe, im: sumIm };
  });
}

/** Kind (0 admittance, 1 factor), real and imaginary part. */
function wallRow(wall: WallReflection, index: number): [number, number, number] {
  const name = boxWallNames[index];
  if (wall.kind === 'factor') {
    requireNumber(`size of the reflection factor of ${name}`, Math.hypot(wall.factor.re, wall.factor.im), {
      atMost: 1,
    });
    return [1, wall.factor.re, wall.factor.im];
  }
  requireNumber(`real part of the specific admittance of ${name}`, wall.admittance.re, { atLeast: 0 });
  requireNumber(`imaginary part of the specific admittance of ${name}`, wall.admittance.im);
  return [0, wall.admittance.re, wall.admittance.im];
}

/** Product of the factors so far, real and imaginary part. */
const factor = new Float64Array(2);

function reflect(table: Float64Array, row: number, cos: number, first: number, second: number): void {
  if (first > 0) power(table, row, cos, first);
  if (second > 0) power(table, row + 3, cos, second);
}

function power(table: Float64Array, row: number, cos: number, times: number): void {
  let re = table[row + 1]!;
  let im = table[row + 2]!;
  if (table[row] === 0) {
    const below = (cos + re) * (cos + re) + im * im;
    // A hard wall met at grazing incidence reflects all.
    const up = below === 0 ? 1 : (cos * cos - re * re - im * im) / below;
    im = below === 0 ? 0 : (-2 * cos * im) / below;
    re = up;
  }
  let left = times;
  let outRe = factor[0]!;
  let outIm = factor[1]!;
  while (left > 0) {
    if (left % 2 === 1) {
      const next = outRe * re - outIm * im;
      outIm = outRe * im + outIm * re;
      outRe = next;
    }
    left = Math.floor(left / 2);
    if (left > 0) {
      const next = re * re - im * im;
      im = 2 * re * im;
      re = next;
    }
  }
  factor[0] = outRe;
  factor[1] = outIm;
}
