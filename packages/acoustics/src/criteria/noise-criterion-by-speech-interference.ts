import { requireBands } from '../bands/require-bands.js';
import {
  highestNoiseCriterion,
  lowestNoiseCriterion,
  type NoiseCriterionFamily,
  noiseCriterionCurveOf,
  noiseCriterionFamilies,
  requireNoiseCriterionFamily,
} from './noise-criterion-family.js';
import { octavesByCount } from './octaves-by-count.js';
import { speechInterferenceLevel } from './speech-interference-level.js';
import { type NoiseCriterion, tangency } from './tangency.js';

/** A noise criterion found from the speech interference level. */
export type SpeechInterferenceCriterion = NoiseCriterion & {
  /** The rule that gave the rating: no band above the curve NC-(SIL), or the highest curve touched. */
  readonly governedBy: 'speech interference level' | 'tangency';
  readonly speechInterferenceLevel: number;
  /** Nominal Hz of the bands that the two lists follow. */
  readonly bands: readonly number[];
  /** The curve of the rating, dB; null when there is no number. */
  readonly contour: readonly number[] | null;
  /** How far the level is above the curve NC-(SIL), dB; null when no such curve exists. */
  readonly excess: readonly number[] | null;
};

/**
 * Noise criterion (NC) with the speech-interference rule.
 *
 * Rule: the spectrum is held against the curve whose number is its speech interference level. If no band is above, the
 * rating is that number; otherwise the highest curve that the spectrum touches. The number of the curve is not rounded;
 * `text` rounds the rating.
 * Units: octave band levels in dB: 7 bands from 63 Hz to 4 kHz, 8 from 63 Hz to 8 kHz; with the curves of S12.2 also 9 from
 * 31.5 Hz or 10 from 16 Hz. Silence is allowed. `governingHz` is null where the speech interference level gave the rating.
 * Source: ANSI/ASA S12.2-2019 clauses 3.2, 5.2.2 and 5.2.3 (as transcribed); curves as in `noiseCriterionFamilies`.
 * Valid: NC 15 to NC 70; outside, there is no number.
 * Errors: ArgumentError for a wrong number of bands or a value that is no number.
 */
export function noiseCriterionBySpeechInterference(
  octaveLevels: readonly number[],
  family: NoiseCriterionFamily,
): SpeechInterferenceCriterion {
  requireNoiseCriterionFamily(family);
  const table = noiseCriterionFamilies[family];
  const counts = family === 'classic' ? [7, 8] : [7, 8, 9, 10];
  requireBands('octave band level', octaveLevels, counts, { silence: true });
  const bands = octavesByCount(octaveLevels.length);
  const first = table.octaves.indexOf(bands[0]!);
  const columns = (curve: readonly number[]) => curve.slice(first, first + bands.length);
  const contourOf = (nc: number) => columns(noiseCriterionCurveOf(family, nc));

  const sil = speechInterferenceLevel(octaveLevels);
  const onCurve = sil >= lowestNoiseCriterion && sil <= highestNoiseCriterion;
  const excess = onCurve ? contourOf(sil).map((level, band) => octaveLevels[band]! - level) : null;
  const shared = { speechInterferenceLevel: sil, bands, excess };
  // A spectrum that is the curve itself is not above it, whatever the last binary digit says.
  if (excess?.every((value) => value <= 1e-9)) {
    return {
      value: sil,
      text: `NC ${Math.round(sil)}`,
      governingHz: null,
      governedBy: 'speech interference level',
      ...shared,
      contour: contourOf(sil),
    };
  }
  const rating = tangency(octaveLevels, bands, table.curves.map(columns));
  const contour = rating.value === null ? null : contourOf(rating.value);
  return { ...rating, governedBy: 'tangency', ...shared, contour };
}
