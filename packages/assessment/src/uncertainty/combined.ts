/** Independent half-widths combine as the root of the sum of their squares. */
export function combinedHalfWidth(...halfWidths: readonly number[]): number {
  return Math.sqrt(halfWidths.reduce((sum, width) => sum + width * width, 0));
}
