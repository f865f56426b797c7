import { thirdLevelsToOctaves } from '../bands/third-levels-to-octaves.js';
import type { FrequencyWeighting } from '../levels/frequency-weighting.js';
import { scaleToReading } from '../levels/scale-to-reading.js';
import { speechSpectrum, type VocalEffort } from './speech-spectrum.js';

/**
 * Octave levels of a voice whose weighted level a meter read.
 *
 * Equation: `speechSpectrum` scaled to the reading by `scaleToReading`, then summed in octaves. Scaling comes first, as the
 * weighting inside an octave is lost in octaves.
 * Units: reading dB; result dB in the 7 octaves 63 Hz to 4 kHz. Those that aren't wholly known, 63 and 125 Hz, are null.
 * Source: as of `speechSpectrum`; energy identity. Valid: where the voice has the shape of its effort.
 * Errors: ArgumentError for an effort that is not known or a reading that is no number.
 */
export function speechOctavesForReading(
  effort: VocalEffort,
  reading: number,
  weighting: FrequencyWeighting,
): (number | null)[] {
  return thirdLevelsToOctaves(scaleToReading(speechSpectrum(effort), reading, weighting));
}
