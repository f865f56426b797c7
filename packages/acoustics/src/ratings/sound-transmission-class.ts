import { type ClassificationContourFit, classificationContourFit } from './classification-contour-fit.js';
import type { PlainOrTransmissionLoss } from './plain-or-transmission-loss.js';

/** A sound transmission class with the fit that led to it. */
export type SoundTransmissionClass = ClassificationContourFit & { readonly stc: number };

/**
 * Sound transmission class (STC) of a transmission loss; `noiseIsolationClass` does the same for a noise reduction.
 *
 * Rule: the transmission loss, rounded to whole dB (half up), is compared with a contour of fixed shape, 125 Hz to
 * 4 kHz; the class is the 500 Hz value of the highest contour, in steps of 1 dB, for which the deficiencies sum to
 * 32 dB at most and none is above 8 dB.
 * Units: dB; either the 21 bands of the working grid or the 16 bands from 125 Hz to 4 kHz.
 * Source: ASTM E413 (contour and rules from memory; confirmed by secondary pages and by three laboratory reports whose
 * printed deficiencies they meet).
 * Valid: for airborne sound like speech; says nothing of sound below 112 Hz. There is no octave variant: octaves hide the
 * dips that the 8 dB rule is made for.
 * Errors: ArgumentError for a wrong number of bands or a value that is no number.
 */
export function soundTransmissionClass<Values extends readonly number[]>(
  transmissionLoss: Values & PlainOrTransmissionLoss<Values>,
): SoundTransmissionClass {
  const { rating, ...fit } = classificationContourFit('transmission loss', transmissionLoss);
  return { stc: rating, ...fit };
}
