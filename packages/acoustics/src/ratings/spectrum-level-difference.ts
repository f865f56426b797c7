import { requireBands } from '../bands/require-bands.js';
import { sumLevels } from '../levels/sum-levels.js';
import type { AdaptationSpectrum } from './adaptation-spectra.js';

/**
 * A-weighted level difference that a transmission loss makes for a spectrum of ISO 717-1.
 *
 * Equation: X_A = -10 lg of the sum of 10^((L_i - X_i)/10).
 * Units: dB; `values` in step with the levels of the spectrum. Not rounded.
 * Source: ISO 717-1, clause on spectrum adaptation terms (as transcribed). The levels are used as printed, without
 * normalising their sum, which is up to 0.23 dB off zero; the printed examples are met that way.
 * Errors: ArgumentError for a wrong number of bands or a value that is no number.
 */
export function spectrumLevelDifference(values: readonly number[], spectrum: AdaptationSpectrum): number {
  requireBands('transmission loss', values, [spectrum.levels.length], {});
  return -sumLevels(spectrum.levels.map((level, index) => level - values[index]!));
}
