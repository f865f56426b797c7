import { thirdOctaveBands } from '../bands/bands.js';
import { ArgumentError } from '../errors/argument-error.js';
import { frequencyWeighting } from '../levels/frequency-weighting.js';
import { type AdaptationSpectrumNumber, adaptationSpectra } from '../ratings/adaptation-spectra.js';
import { speechSpectrum } from './speech-spectrum.js';

/** Names of the noise shapes. */
export type NoiseShapeName = 'road-traffic' | 'living-noise' | 'speech' | 'pink';

/**
 * Relative spectrum of a kind of noise, to be scaled to a reading by `scaleToReading`.
 *
 * Equation: for `road-traffic` and `living-noise` the spectra No. 2 and No. 1 of ISO 717-1, which are A-weighted, less
 * the A-weighting at the exact mid-band frequencies; `speech` is `speechSpectrum('normal')`; `pink` has the same level
 * in every third.
 * Units: dB, unweighted, 21 thirds; only the differences between bands count. `speech` is unknown (null) below 160 Hz.
 * Source: ISO 717-1 Annex B Table B.1, 50 Hz to 5 kHz (from memory, confirmed by transcriptions and by both
 * printed results of Annex C Table C.2);
 * ANSI S3.5-1997 Table 3 (as transcribed).
 * Valid: as rough stand-ins. The whole-decibel spectra are those of a rating rule, not of a measured street, and traffic
 * with heavy vehicles or trams holds more below 80 Hz.
 * Errors: ArgumentError for a name that is not known.
 */
export function noiseShape(name: NoiseShapeName): (number | null)[] {
  switch (name) {
    case 'road-traffic':
      return unweighted(2);
    case 'living-noise':
      return unweighted(1);
    case 'speech':
      return speechSpectrum('normal');
    case 'pink':
      return thirdOctaveBands.map(() => 0);
    default:
      throw new ArgumentError('noise shape', `"${String(name)}"`, 'road-traffic, living-noise, speech or pink');
  }
}

function unweighted(spectrum: AdaptationSpectrumNumber): number[] {
  const { levels } = adaptationSpectra[spectrum]['50To5000'];
  return levels.map((level, index) => level - frequencyWeighting('A', thirdOctaveBands[index]!.exact));
}
