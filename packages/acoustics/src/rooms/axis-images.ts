/** Images of a source between two parallel walls, nearest to the receiver first. */
export type AxisImages = {
  /** From the receiver along the axis, m. */
  readonly distance: Float64Array;
  /** Reflections at the wall at zero, and at the opposite one. */
  readonly first: Int32Array;
  readonly second: Int32Array;
};

/**
 * Images of a source between two parallel walls.
 *
 * Equation: x = 2 m L + (1 - 2 u) x0, u = 0, 1; |m - u| reflections at the wall at zero and |m| at the opposite one.
 * Units: m; `reach` the largest distance kept. Source: J. B. Allen and D. A. Berkley, JASA 65, 1979 (from memory).
 */
export function axisImages(side: number, source: number, receiver: number, reach: number): AxisImages {
  const images: { distance: number; first: number; second: number }[] = [];
  const most = Math.ceil(reach / (2 * side)) + 1;
  for (let m = -most; m <= most; m++) {
    for (let u = 0; u <= 1; u++) {
      const distance = Math.abs(2 * m * side + (1 - 2 * u) * source - receiver);
      if (distance <= reach) images.push({ distance, first: Math.abs(m - u), second: Math.abs(m) });
    }
  }
  images.sort((a, b) => a.distance - b.distance || a.first + a.second - b.first - b.second);
  return {
    distance: Float64Array.from(images, (image) => image.distance),
    first: Int32Array.from(images, (image) => image.first),
    second: Int32Array.from(images, (image) => image.second),
  };
}
