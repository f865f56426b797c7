import type { TransmissionLoss } from '../quantities/transmission-loss.js';
import { defaultRimAbsorption } from './air-gap-fluid.js';
import { bandMeans } from './band-means.js';
import { type FieldConditions, gapLosses, transmissionWith } from './diffuse-transmission-loss.js';
import { checkField } from './field-integral.js';
import { checkLayers, type Layer } from './layer.js';

/** Surroundings of a wall, and how finely each band is sampled. */
export type BandConditions = FieldConditions & {
  /** Number of `bandSamples` to average; when absent the bands are sampled as finely as the spectrum needs. */
  readonly samplesPerBand?: number;
};

/**
 * Transmission loss of a stack in the 21 third-octave bands, dB.
 *
 * Equation: R = -10 lg of the mean of tau_d over the band, found by `bandMeans`, since a measured band is a sum of
 * energy. Source and validity as in `diffuseTransmission`.
 * See also: `wallTransmissionLoss` for a wall with studs.
 */
export function bandTransmissionLoss(
  layers: readonly Layer[],
  { air, field, rimAbsorption = defaultRimAbsorption, samplesPerBand }: BandConditions,
): TransmissionLoss {
  checkLayers(layers);
  checkField(field);
  const losses = gapLosses(layers, field, rimAbsorption, air);
  const [means] = bandMeans((hz) => {
    const { coefficient, converged } = transmissionWith(layers, hz, air, field, losses);
    return { values: [coefficient], converged };
  }, samplesPerBand);
  return means!.map((mean) => -10 * Math.log10(mean)) as readonly number[] as TransmissionLoss;
}
