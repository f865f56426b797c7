import { type Air, boxModes } from '@boothwright/acoustics';
import type { BoothResult } from '../result/result-document.js';
import type { Size } from './geometry.js';

/** Modes up to here are listed, Hz: above it they overlap in any booth. */
export const modeListLimit = 500;

export function modesOf(size: Size, air: Air): BoothResult['modesHz'] {
  return boxModes([...size], modeListLimit, air).map(({ hz, order }) => ({ hz, order: [...order] as const }));
}

/** First mode of the closed rigid box, Hz: c / (2 L) of the longest side. */
export function firstModeOf(size: Size, air: Air): number {
  return air.soundSpeed / (2 * Math.max(...size));
}
