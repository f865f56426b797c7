import { sumLevels } from '../levels/sum-levels.js';
import type { InsertionLoss } from '../quantities/insertion-loss.js';
import { requireDuctOctaves } from './require-duct-octaves.js';

/** An element of a duct path: what it takes off and what noise of its own it adds. */
export type DuctPathElement = {
  /** dB in the 8 octaves. */
  readonly loss: InsertionLoss;
  /** Sound power that the air makes in it, dB in the 8 octaves; null for none. */
  readonly flowNoise: readonly number[] | null;
};

/**
 * Sound power at the end of an air path, element after element, dB re 1 pW in the 8 octaves 63 Hz to 8 kHz.
 *
 * Equation: L_i = 10 lg(10^((L_(i-1) - IL_i)/10) + 10^(N_i/10)): what the element makes itself isn't taken off by it.
 * Units: dB. Source: energy sum (common practice); laid out as M. Long, Architectural Acoustics, 2nd ed., 2014, Table 14.9.
 * Errors: ArgumentError for a spectrum that isn't 8 numbers.
 *
 * @example
 * ```ts
 * import { asInsertionLoss } from '@boothwright/acoustics/quantities';
 * import { ductPathLevels } from '@boothwright/acoustics/ventilation';
 *
 * // Invented: a fan, then a silencer that makes 30 dB in every octave.
 * const fan = [80, 78, 75, 72, 70, 66, 62, 58];
 * const silencer = {
 *   loss: asInsertionLoss([4, 8, 15, 25, 35, 36, 28, 18]),
 *   flowNoise: [30, 30, 30, 30, 30, 30, 30, 30],
 * };
 * ductPathLevels(fan, [silencer]).map(Math.round); // [76, 70, 60, 47, 36, 33, 35, 40]
 * ```
 */
export function ductPathLevels(source: readonly number[], elements: readonly DuctPathElement[]): number[] {
  requireDuctOctaves('source level', source);
  return elements.reduce(
    (levels, { loss, flowNoise }) => {
      requireDuctOctaves('loss', loss);
      if (flowNoise !== null) requireDuctOctaves('flow noise', flowNoise);
      return levels.map((level, octave) => {
        const passed = level - loss[octave]!;
        return flowNoise === null ? passed : sumLevels([passed, flowNoise[octave]!]);
      });
    },
    [...source],
  );
}
