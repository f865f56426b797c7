import { thirdOctaveBands } from '../bands/bands.js';
import { requireNumber } from '../errors/require-number.js';
import { scaleToReading } from '../levels/scale-to-reading.js';

/**
 * Third-octave spectrum of a microphone's own noise, dB re 20 uPa, from its equivalent noise level.
 *
 * Equation: levels alike in every hertz (`white`: +1 dB a third) or in every third (`pink`), scaled to the reading.
 * Units: equivalent level dBA; result dB in 21 thirds. Source: IEC 60268-4 definition of the level (from memory).
 * Valid: the shape is an assumption, as a single figure says nothing of it; a reading with the quasi-peak weighting of
 * ITU-R 468 is 10 to 12 dB higher (from memory) and isn't meant. Errors: ArgumentError for a level that is no number.
 */
export function microphoneSelfNoise(equivalentLevel: number, shape: 'white' | 'pink'): number[] {
  requireNumber('equivalent noise level', equivalentLevel, { unit: 'decibels' });
  const levels = thirdOctaveBands.map((_, band) => (shape === 'white' ? band : 0));
  return scaleToReading(levels, equivalentLevel, 'A');
}
