import { type Air, boxModes } from '@boothwright/acoustics';
import type { BoothResult } from '../result/result-document.js';
import type { Size } from './geometry.js';

/** Modes up to here are listed, Hz: above it they overlap in any booth. */
export const modeListLimit = 500;
/** About so many modes are listed at most: a hall has millions of them below 500 Hz, and nobody reads them. */
export const mostModes = 500;

export function modesOf(size: Size, air: Air): BoothResult['modesHz'] {
  return boxModes([...size], Math.min(modeListLimit, frequencyOfCount(size, air)), air).map(({ hz, order }) => ({
    hz,
    order: [...order] as const,
  }));
}

/** Frequency below which a box has about `mostModes` modes: N = 4 pi V f^3 / (3 c^3), the leading term of the count. */
function frequencyOfCount([width, depth, height]: Size, air: Air): number {
  return air.soundSpeed * ((3 * mostModes) / (4 * Math.PI * width * depth * height)) ** (1 / 3);
}
