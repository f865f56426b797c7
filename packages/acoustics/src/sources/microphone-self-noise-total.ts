import { sumLevels } from '../levels/sum-levels.js';
import { type SelfNoiseShape, selfNoiseBands, selfNoiseOf } from './microphone-self-noise.js';

/**
 * Unweighted level of a microphone's own noise from 20 Hz to 20 kHz, dB re 20 uPa, from its equivalent noise level.
 *
 * Equation: energy sum of the 31 thirds whose A-weighted sum is the equivalent level; 1.9 dB above it for `white`, 3.1 dB
 * for `pink`. Units: dBA in, dB out. Source, validity and errors as `microphoneSelfNoise`.
 */
export function microphoneSelfNoiseTotal(equivalentLevel: number, shape: SelfNoiseShape): number {
  return sumLevels(selfNoiseOf(equivalentLevel, shape, selfNoiseBands));
}
