import type { Air } from '../air/air-properties.js';
import { ArgumentError } from '../errors/argument-error.js';
import { requireNumber } from '../errors/require-number.js';

/**
 * Rejects what is not air, as a program without types can pass.
 * Errors: ArgumentError that names what is missing.
 */
export function checkAir(air: Air): void {
  if (typeof air !== 'object' || air === null) throw new ArgumentError('air', air, 'what airProperties gives');
  requireNumber('speed of sound in the air', air.soundSpeed, { above: 0, unit: 'metres per second' });
  requireNumber('density of the air', air.density, { above: 0, unit: 'kg/m3' });
  requireNumber('impedance of the air', air.impedance, { above: 0, unit: 'Pa s/m' });
}
