import { ArgumentError } from '../errors/argument-error.js';
import { requireNumber } from '../errors/require-number.js';

/** Width (left to right), depth (front to back) and height (floor to ceiling) of a box, m. */
export type BoxDimensions = readonly [number, number, number];

/** A point in a box, m, from its left front lower corner along width, depth and height. */
export type BoxPoint = readonly [number, number, number];

/** Names of the six walls of a box. */
export type BoxWallName = 'left' | 'right' | 'front' | 'back' | 'floor' | 'ceiling';

/** One value for each wall of a box. */
export type BoxWalls<Value> = { readonly [name in BoxWallName]: Value };

/** The walls in the order of the axes: the wall at zero, then the opposite one. */
export const boxWallNames = ['left', 'right', 'front', 'back', 'floor', 'ceiling'] as const;

/**
 * Volume m3, surface of all walls m2, length of the twelve edges m, and the areas of the three pairs of walls m2.
 * Errors: ArgumentError for a side that isn't above zero.
 */
export function boxGeometry(size: BoxDimensions): {
  readonly volume: number;
  readonly surface: number;
  readonly edges: number;
  readonly pairs: readonly [number, number, number];
} {
  const [width, depth, height] = requireBox(size);
  const pairs = [2 * depth * height, 2 * width * height, 2 * width * depth] as const;
  return {
    volume: width * depth * height,
    surface: pairs[0] + pairs[1] + pairs[2],
    edges: 4 * (width + depth + height),
    pairs,
  };
}

/** Rejects a box without three sides above zero. Errors: ArgumentError. */
export function requireBox(size: BoxDimensions): BoxDimensions {
  if (size.length !== 3) throw new ArgumentError('number of sides of the box', size.length, '3');
  const names = ['width', 'depth', 'height'];
  size.forEach((side, axis) => {
    requireNumber(`${names[axis]} of the box`, side, { above: 0, unit: 'metres' });
  });
  return size;
}

/** Rejects a point that isn't in the box or on its walls. Errors: ArgumentError. */
export function requireInside(what: string, point: BoxPoint, size: BoxDimensions): BoxPoint {
  if (point.length !== 3) throw new ArgumentError(`number of coordinates of the ${what}`, point.length, '3');
  const names = ['width', 'depth', 'height'];
  point.forEach((position, axis) => {
    requireNumber(`place of the ${what} along the ${names[axis]}`, position, {
      atLeast: 0,
      atMost: size[axis]!,
      unit: 'metres',
    });
  });
  return point;
}

/** One value per wall as a list in the order of `boxWallNames`. */
export function listWalls<Value>(walls: BoxWalls<Value>): Value[] {
  return boxWallNames.map((name) => walls[name]);
}
