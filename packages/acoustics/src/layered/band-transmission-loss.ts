import type { TransmissionLoss } from '../quantities/transmission-loss.js';
import { defaultRimAbsorption } from './air-gap-fluid.js';
import { type BandSampling, bandMeans } from './band-means.js';
import { checkSurroundings, checkWallLayers } from './check-wall.js';
import { type FieldConditions, gapLosses, transmissionWith } from './diffuse-transmission-loss.js';
import type { Layer } from './layer.js';
import { lossesOfCoefficients } from './loss-of-coefficient.js';

/** Surroundings of a wall, and how finely each band is sampled. */
export type BandConditions = FieldConditions & BandSampling;

/**
 * Transmission loss of a stack in the 21 third-octave bands, dB.
 *
 * Equation: R = -10 lg of the mean of tau_d over the band, found by `bandMeans`, since a measured band is a sum of
 * energy. Source and validity as in `diffuseTransmission`.
 * For a wall as built use `wallTransmissionLoss`, which differs by three things left out here: the modes of a single leaf
 * (`resonantTransmission`), the spread of stiffness between the leaves of a wall of several (`unlikeLeaves`), and studs.
 * Errors: ArgumentError for a list without layers, a layer, air or field that cannot be, an absorption of the rim that is not
 * from 0 to 1, a number of samples that is not a whole number above 0, or a tolerance that is not between 0 and 1; Error when the sum over directions does not
 * converge.
 */
export function bandTransmissionLoss(layers: readonly Layer[], conditions: BandConditions): TransmissionLoss {
  checkWallLayers(layers);
  checkSurroundings(conditions);
  const { air, field, rimAbsorption = defaultRimAbsorption } = conditions;
  const losses = gapLosses(layers, field, rimAbsorption, air);
  const [means] = bandMeans((hz) => {
    const { coefficient, converged } = transmissionWith(layers, hz, air, field, losses);
    return { values: [coefficient], converged };
  }, conditions);
  return lossesOfCoefficients(means!);
}
