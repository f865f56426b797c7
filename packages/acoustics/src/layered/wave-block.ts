/** Most directions that are followed at once; what they need stays in the nearest cache. */
export const blockSize = 64;

/**
 * Waves at several directions side by side. One such block serves the whole package as working memory: whoever fills it
 * reads it out before the next call, and nothing is kept in it between two calls.
 */
export type WaveBlock = {
  readonly cosine: Float64Array;
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

/** Arrays of a block, one behind the other. */
const columns = 9;
/** Bytes that a block takes. */
export const blockBytes = columns * blockSize * Float64Array.BYTES_PER_ELEMENT;

/** A block at the start of a memory. */
export function blockIn(buffer: ArrayBuffer): WaveBlock {
  const column = (index: number) =>
    new Float64Array(buffer, index * blockSize * Float64Array.BYTES_PER_ELEMENT, blockSize);
  return {
    cosine: column(0),
    pressureRe: column(1),
    pressureIm: column(2),
    velocityRe: column(3),
    velocityIm: column(4),
    firstRe: column(5),
    firstIm: column(6),
    secondRe: column(7),
    secondIm: column(8),
  };
}
