/**
 * Play of a rectangle p x q in a rectangle a x b, m; negative by how much it is too large, in the better of two ways.
 *
 * Straight: min(a - p, b - q), with the longer sides along each other. At an angle: what the shorter side b is longer
 * than the least that holds the rectangle, b0 = (2 p q a + (p^2 - q^2) sqrt(p^2 + q^2 - a^2)) / (p^2 + q^2), where
 * p > a and q <= b. The rectangle fits in some position exactly where the play is not negative.
 *
 * Source: W. B. Carver, solution of problem E 1225, Amer. Math. Monthly 64 (1957) 114-116, from memory; the condition is
 * also in J. E. Wetzel, Rectangles in rectangles, Math. Mag. 73 (2000) 204-211. All sides in m and positive.
 */
export function rectangleFit(one: number, other: number, width: number, depth: number): RectangleFit {
  const p = Math.max(one, other);
  const q = Math.min(one, other);
  const a = Math.max(width, depth);
  const b = Math.min(width, depth);
  const straight = Math.min(a - p, b - q);
  if (p <= a || q > b) return { play: straight, angled: false };
  const squares = p * p + q * q;
  const least = (2 * p * q * a + (p * p - q * q) * Math.sqrt(squares - a * a)) / squares;
  const angled = b - least;
  return angled > straight ? { play: angled, angled: true } : { play: straight, angled: false };
}

export interface RectangleFit {
  /** m; negative where it does not fit */
  readonly play: number;
  /** True where the rectangle stands at an angle. */
  readonly angled: boolean;
}
