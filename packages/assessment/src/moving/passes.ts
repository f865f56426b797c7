import type { Passes } from '../result/moving-result.js';
import { comfort } from './practice.js';

/** Rounding of sums of lengths, m. */
const rounding = 1e-9;

/** A verdict on what is left, m. */
export function passes(left: number, easy: number = comfort): Passes {
  if (left < -rounding) return 'does-not-go';
  return left < easy - rounding ? 'tight' : 'goes';
}
