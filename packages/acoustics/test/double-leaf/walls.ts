import { airProperties } from '../../src/air/air-properties.js';
import type { DavyWall } from '../../src/double-leaf/davy-double-leaf.js';
import type { SharpWall } from '../../src/double-leaf/sharp-double-leaf.js';
import type { WallLeaf } from '../../src/double-leaf/wall-leaf.js';

/** Invented but ordinary leaves and walls. */
export const air = airProperties({ temperature: 20, relativeHumidity: 0.5 });
export const limp: WallLeaf = { surfaceMass: 10, criticalFrequency: Number.POSITIVE_INFINITY, lossFactor: 0 };
export const board: WallLeaf = { surfaceMass: 8.5, criticalFrequency: 3150, lossFactor: 0.02 };
export const size = { width: 4, height: 2.5 };
export const filled = { depth: 0.09, fillDepth: 0.09 };
export const sharpWall: SharpWall = { leaves: [board, board], cavity: filled, absorptionRatio: 2 };
export const davyWall: DavyWall = {
  leaves: [board, board],
  cavity: filled,
  cavityAbsorption: 1,
  size,
  largestAngleDeg: 61,
};
