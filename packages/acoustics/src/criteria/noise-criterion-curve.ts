import { noiseCriterionCurveOf } from './noise-criterion-family.js';

/** Octave bands, nominal Hz, that seven levels don't show and that the newest curves reach into. */
export const noiseCriterionNotAssessedHz: readonly number[] = [16, 31.5, 8000];

/**
 * An NC curve of the classic family, between the printed ones by linear interpolation.
 *
 * Units: NC number in, octave band levels in dB out, 63 Hz to 4 kHz (7 bands).
 * Source: Beranek's NC curves as printed in "Noise Criteria (NC) Curves", 2018; interpolation is common practice.
 * Valid: NC 15 to NC 70. The 16, 31.5 and 8000 Hz bands are left out; `noiseCriterionCurveOf` has 8 kHz too.
 * Errors: ArgumentError outside NC 15 .. 70.
 */
export function noiseCriterionCurve(nc: number): number[] {
  return noiseCriterionCurveOf('classic', nc).slice(0, 7);
}
