/**
 * A value in whole units, the half rounded up.
 *
 * Sums of decimal figures can fall a few parts in 1e15 short of the half that was meant, hence the small part.
 */
export function roundHalfUp(value: number): number {
  return Math.floor(value + 0.5 + 1e-9);
}
