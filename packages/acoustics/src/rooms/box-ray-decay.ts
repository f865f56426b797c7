import type { Air } from '../air/air-properties.js';
import { requireNumber } from '../errors/require-number.js';
import { type BoxDimensions, type BoxWalls, listWalls, requireBox } from './box-geometry.js';
import { decayOfExponentials, type ExponentialDecay } from './decay-of-exponentials.js';
import { requireNotNegative } from './require-positive.js';

/** Directions per axis of one octant. */
const grid = 8;

/** Middle of equal solid angles over one octant: cosines to the three axes. */
const directions: readonly (readonly [number, number, number])[] = Array.from({ length: grid * grid }, (_, index) => {
  const up = (Math.floor(index / grid) + 0.5) / grid;
  const turn = (((index % grid) + 0.5) * Math.PI) / (2 * grid);
  const flat = Math.sqrt(1 - up * up);
  return [flat * Math.cos(turn), flat * Math.sin(turn), up] as const;
});

/**
 * Decay times of sound in a box whose walls mirror and never scatter: every direction keeps its own rate.
 *
 * Equation: rate(u) = c [sum over axes |u| a / L + m' + A / (4 V)], a = -(ln(1 - alpha_0) + ln(1 - alpha_1)) / 2,
 * E(t) = mean over all directions of exp(-rate t); EDT, T20 and T30 of it by `decayOfExponentials`.
 * Units: sides m, absorption 0..1 of each wall, attenuation of the air dB/m, absorption area A of what stands in the box m2
 * (it is met from all directions alike); result s. Null where sound in some direction never decays.
 * Source: derived, the image sources of a box averaged over place; directions by 64 equal solid angles of an octant.
 * Valid: the slow limit. Eyring's time, which mixes directions at every wall, is the fast one; a room with scattering
 * lies between. Above the Schroeder frequency.
 * Errors: ArgumentError for a side, coefficient, attenuation or area that can't be.
 */
export function boxRayDecay(
  size: BoxDimensions,
  absorption: BoxWalls<number>,
  attenuation: number,
  objects: number,
  air: Air,
): { readonly edt: number; readonly t20: number; readonly t30: number } | null {
  requireBox(size);
  requireNotNegative('attenuation of the air', attenuation, 'dB/m');
  requireNotNegative('absorption area of objects', objects, 'm2');
  // A wall that takes all still lets a part in a million through, so that every rate is finite.
  const taken = listWalls(absorption).map((value) => {
    requireNumber('absorption of a wall', value, { atLeast: 0, atMost: 1 });
    return -Math.log(Math.max(1e-6, 1 - value));
  });
  const perMetre = size.map((side, axis) => (taken[2 * axis]! + taken[2 * axis + 1]!) / 2 / side);
  const always = (attenuation * Math.LN10) / 10 + objects / (4 * size[0] * size[1] * size[2]);
  const parts: ExponentialDecay[] = directions.map(([x, y, z]) => ({
    energy: 1,
    rate: air.soundSpeed * (x * perMetre[0]! + y * perMetre[1]! + z * perMetre[2]! + always),
  }));
  return decayOfExponentials(parts);
}
