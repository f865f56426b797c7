import type { Air } from '../air/air-properties.js';
import { ArgumentError } from '../errors/argument-error.js';
import { requireNumber } from '../errors/require-number.js';

/** Width, depth and height, m. */
export type BoxSize = readonly [number, number, number];
/** A mode of a hard rectangular room. */
export type BoxMode = { readonly hz: number; readonly order: readonly [number, number, number] };

/** Modes that a list may hold; more are no longer looked at one by one, and `modalCount` counts them. */
export const largestModeCount = 200_000;

/**
 * Eigenfrequencies of a box with hard walls up to `upTo` Hz, lowest first.
 *
 * Equation: f = (c/2) sqrt((n_x/w)^2 + (n_y/d)^2 + (n_z/h)^2), not all n zero.
 * Source: common practice. Valid for hard walls; linings and yielding walls shift and damp the modes.
 * Errors: ArgumentError for a side or frequency that can't be, or where the list would hold more than `largestModeCount`
 * modes, by the estimate pi/6 of the lattice of orders round the ellipsoid that they fill.
 *
 * @example
 * ```ts
 * import { airProperties } from '@boothwright/acoustics/air';
 * import { boxModes } from '@boothwright/acoustics/enclosure';
 *
 * const air = airProperties({ temperature: 20, relativeHumidity: 0.5 });
 * boxModes([2, 1.5, 2.2], 100, air).map(({ order }) => order.join('')); // ['001', '100']
 * ```
 */
export function boxModes(size: BoxSize, upTo: number, air: Air): BoxMode[] {
  checkBox(size);
  requireNumber('upper frequency', upTo, { atLeast: 0, unit: 'Hz' });
  const half = air.soundSpeed / 2;
  const most = size.map((length) => Math.floor((upTo * length) / half));
  const estimate = most.reduce((product, order) => product * (order + 1), Math.PI / 6);
  if (estimate > largestModeCount) {
    const found = `about ${estimate.toPrecision(2)}`;
    throw new ArgumentError(`number of modes up to ${upTo} Hz`, found, `at most ${largestModeCount}`);
  }
  const modes: BoxMode[] = [];
  for (let x = 0; x <= most[0]!; x++) {
    for (let y = 0; y <= most[1]!; y++) {
      for (let z = 0; z <= most[2]!; z++) {
        const hz = half * Math.hypot(x / size[0], y / size[1], z / size[2]);
        if (hz > 0 && hz <= upTo) modes.push({ hz, order: [x, y, z] });
      }
    }
  }
  return modes.sort((a, b) => a.hz - b.hz);
}

/** Lowest eigenfrequency of a box with hard walls, Hz: c over twice its longest side. */
export function firstCavityMode(size: BoxSize, air: Air): number {
  checkBox(size);
  return air.soundSpeed / (2 * Math.max(...size));
}

function checkBox(size: BoxSize): void {
  for (const length of size) {
    requireNumber('side of the box', length, { above: 0, unit: 'metres' });
  }
}
