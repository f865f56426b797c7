import { requireNumber } from '../errors/require-number.js';
import { asTransmissionLoss, type TransmissionLoss } from '../quantities/transmission-loss.js';
import { ductOctaves, metresPerInch } from './duct-tables.js';
import { requireDuctOctaves } from './require-duct-octaves.js';

/**
 * Transmission loss of the wall of a round duct for sound that enters it, dB in the 8 octaves 63 Hz to 8 kHz.
 *
 * Equation: above the first mode across the duct, f_1 = 7929/d, the breakout loss less 3 dB; up to it the greater of
 * R_out - 4 + 20 lg(f/f_1) and 10 lg(2 l/d): below the second the duct takes in no more than an opening of its own section does.
 * d in inches in f_1 only (0.586 c/d), elsewhere both lengths alike. Units: m; losses dB.
 * Source: I. L. Ver (1983), reciprocity, as given in M. Long, Architectural Acoustics, Eqs. (14.57) to (14.59), read on a public
 * page: the rule of a rectangular duct, in which a round one has a = b. f_1 from memory.
 * Valid: as of the breakout loss that goes in. Errors: ArgumentError for a dimension that can't be or a spectrum that isn't 8
 * numbers.
 *
 * @example
 * ```ts
 * import { roundDuctBreakinLoss, roundDuctBreakoutLoss } from '@boothwright/acoustics/ventilation';
 *
 * const out = roundDuctBreakoutLoss({ diameter: 0.125 });
 * roundDuctBreakinLoss(out, { diameter: 0.125, length: 1.2 })[1]; // 26.8
 * ```
 */
export function roundDuctBreakinLoss(
  breakoutLoss: TransmissionLoss,
  { diameter, length }: { readonly diameter: number; readonly length: number },
): TransmissionLoss {
  requireDuctOctaves('breakout loss', breakoutLoss);
  requireNumber('duct diameter', diameter, { above: 0, unit: 'metres' });
  requireNumber('duct length', length, { above: 0, unit: 'metres' });
  const firstMode = 7929 / (diameter / metresPerInch);
  const least = 10 * Math.log10((2 * length) / diameter);
  const octaves = ductOctaves.map((hz, octave) => {
    const out = breakoutLoss[octave]!;
    return hz > firstMode ? out - 3 : Math.max(out - 4 + 20 * Math.log10(hz / firstMode), least);
  });
  return asTransmissionLoss(octaves);
}
