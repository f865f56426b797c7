import { ArgumentError } from '../errors/argument-error.js';
import { requireNumber } from '../errors/require-number.js';
import { ductOctaves } from './duct-tables.js';

/** Rejects a spectrum that isn't the 8 octaves 63 Hz to 8 kHz, or holds a value that is no number. */
export function requireDuctOctaves(what: string, values: readonly number[]): void {
  if (values.length !== ductOctaves.length) {
    throw new ArgumentError(`number of octaves of ${what}`, values.length, '8, the octaves 63 Hz to 8 kHz');
  }
  values.forEach((value, index) => {
    requireNumber(`${what} in the octave of ${ductOctaves[index]} Hz`, value, { unit: 'decibels' });
  });
}
