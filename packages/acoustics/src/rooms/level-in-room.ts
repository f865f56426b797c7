import type { Air } from '../air/air-properties.js';
import { requireNumber } from '../errors/require-number.js';
import { levelOf } from '../levels/level-of.js';
import { requirePositive } from './require-positive.js';

/** Impedance that makes sound power level and free-field pressure level agree, Pa s/m: (20 uPa)^2 over 1 pW. */
const referenceImpedance = 400;

/**
 * Level at a distance from a source in a room, direct and reverberant sound together.
 *
 * Equation: L_p = L_W + 10 lg(Q / (4 pi r^2) + 4 / R) + 10 lg(rho c / 400).
 * Units: L_W dB re 1 pW, distance r m, directivity factor Q (1 for all round), room constant R m2 (infinite: free field);
 * result dB re 20 uPa.
 * Source: common practice.
 * Valid: for a diffuse reverberant field, above the Schroeder frequency, and r beyond the size of the source.
 * Errors: ArgumentError for a distance, factor or room constant that isn't above zero.
 */
export function levelInRoom(
  powerLevel: number,
  distance: number,
  directivity: number,
  roomConstant: number,
  air: Air,
): number {
  requireNumber('sound power level', powerLevel, { unit: 'dB' });
  requirePositive('distance from the source', distance, 'metres');
  requirePositive('directivity factor', directivity);
  if (roomConstant !== Number.POSITIVE_INFINITY) requirePositive('room constant', roomConstant, 'square metres');
  const field = directivity / (4 * Math.PI * distance * distance) + 4 / roomConstant;
  return powerLevel + levelOf(field * (air.impedance / referenceImpedance));
}
