/** Most directions that are followed at once; what they need stays in the nearest cache. */
export const blockSize = 64;

/**
 * Waves at several directions side by side. One such block serves the whole package as working memory: whoever fills it
 * reads it out before the next call, and nothing is kept in it between two calls.
 */
export type WaveBlock = {
  readonly cosine: Float64Array;
  /** sin^2(theta) */
  readonly sineSquared: Float64Array;
  readonly pressureRe: Float64Array;
  readonly pressureIm: Float64Array;
  readonly velocityRe: Float64Array;
  readonly velocityIm: Float64Array;
  /** Velocities at two marked operations. */
  readonly firstRe: Float64Array;
  readonly firstIm: Float64Array;
  readonly secondRe: Float64Array;
  readonly secondIm: Float64Array;
};

const numbers = () => new Float64Array(blockSize);

export const block: WaveBlock = {
  cosine: numbers(),
  sineSquared: numbers(),
  pressureRe: numbers(),
  pressureIm: numbers(),
  velocityRe: numbers(),
  velocityIm: numbers(),
  firstRe: numbers(),
  firstIm: numbers(),
  secondRe: numbers(),
  secondIm: numbers(),
};
