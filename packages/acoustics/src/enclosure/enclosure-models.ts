import { type Band, thirdOctaveBands } from '../bands/bands.js';
import { requireNumber } from '../errors/require-number.js';

/** Which model of an enclosure speaks in a band. */
export type EnclosureModel = 'small-enclosure' | 'hand-over' | 'few-modes' | 'statistical';

/**
 * Which model speaks in which band, from the closed box at low to the diffuse field at high frequencies.
 *
 * Rule: a band that ends at or below `closedBoxLimit` (see `smallEnclosureLimit`) is the closed box: the air inside is one
 * spring. From there to the band that holds `firstMode` (see `firstCavityMode`) both models are stretched: hand-over. Then
 * up to `schroeder` (see `schroederFrequency`) a few modes rule and the statistical formula is used with a wider range;
 * above it the formula holds.
 * Units: Hz. Source: our own rule; the limits are those of the two models.
 * Errors: ArgumentError for a frequency below 0.
 */
export function enclosureModels(
  closedBoxLimit: number,
  firstMode: number,
  schroeder: number,
  bands: readonly Band[] = thirdOctaveBands,
): EnclosureModel[] {
  requireNumber('limit of the closed box', closedBoxLimit, { atLeast: 0, unit: 'Hz' });
  requireNumber('first mode', firstMode, { atLeast: 0, unit: 'Hz' });
  requireNumber('Schroeder frequency', schroeder, { atLeast: 0, unit: 'Hz' });
  return bands.map((band) => {
    if (band.upper <= closedBoxLimit) return 'small-enclosure';
    if (band.lower <= firstMode) return 'hand-over';
    return band.exact < schroeder ? 'few-modes' : 'statistical';
  });
}

/**
 * Level difference that counts in a band, dB: that of the closed box, the smaller one in a hand-over band, or the statistical.
 *
 * Source: our own rule, the less favourable of two stretched models. See `enclosureModels`.
 */
export function handOverLevelDifference(model: EnclosureModel, closedBox: number, statistical: number): number {
  if (model === 'small-enclosure') return closedBox;
  return model === 'hand-over' ? Math.min(closedBox, statistical) : statistical;
}
