import type { Ranged } from '../result/result-document.js';

/** A value with an equal half-width to both sides. */
export function ranged(value: number, halfWidth: number, basis: string): Ranged {
  return { value, low: value - halfWidth, high: value + halfWidth, basis };
}

/** A value that is a plain sum of what the text states; its range is that of the stated figures, here none. */
export function stated(value: number, basis: string): Ranged {
  return { value, low: value, high: value, basis };
}
