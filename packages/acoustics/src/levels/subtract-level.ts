import { ArgumentError } from '../errors/argument-error.js';
import { energyOf } from './energy-of.js';
import { levelOf } from './level-of.js';

/**
 * Level of what is left of a sound when a part of it, as the background noise, is taken away.
 *
 * Equation: L = 10 lg (10^(L_total/10) - 10^(L_part/10)). Units: dB. A part equal to the total leaves silence.
 * Source: energy identity. Valid for sounds without a fixed phase relation; a difference below 3 dB makes it unreliable.
 * Errors: ArgumentError for a level that is no number, or a part above the total.
 */
export function subtractLevel(total: number, part: number): number {
  const left = energyOf(total) - energyOf(part);
  if (left < 0) throw new ArgumentError('level of the part', part, `a number of dB up to that of the total, ${total}`);
  return levelOf(left);
}
