import { thirdOctaveBands } from '../bands/bands.js';
import { bandSamples, defaultSamplesPerBand } from './band-samples.js';
import { diffuseTransmission, expectConverged, type FieldConditions } from './diffuse-transmission-loss.js';
import type { Layer } from './layer.js';

/** Surroundings of a wall, and how finely each band is sampled. */
export type BandConditions = FieldConditions & {
  /** `defaultSamplesPerBand` when absent. */
  readonly samplesPerBand?: number;
};

/**
 * Transmission loss of a stack in the 21 third-octave bands, dB.
 *
 * Equation: R = -10 lg of the mean of tau_d over the band, sampled at `bandSamples`, since a measured band is a sum of
 * energy. Source and validity as in `diffuseTransmission`.
 * See also: `wallTransmissionLoss` for a wall with studs.
 */
export function bandTransmissionLoss(
  layers: readonly Layer[],
  { samplesPerBand = defaultSamplesPerBand, ...conditions }: BandConditions,
): number[] {
  return thirdOctaveBands.map((band) => {
    const samples = bandSamples(band, samplesPerBand);
    let sum = 0;
    for (const hz of samples) {
      const result = diffuseTransmission(layers, hz, conditions);
      expectConverged(result.converged, hz);
      sum += result.coefficient;
    }
    return -10 * Math.log10(sum / samples.length);
  });
}
