import { requireNumber } from '../errors/require-number.js';
import { asTransmissionLoss, type TransmissionLoss } from '../quantities/transmission-loss.js';
import { ductOctaves, metresPerInch } from './duct-tables.js';
import { requireDuctOctaves } from './require-duct-octaves.js';

/** The part of a rectangular duct that passes a noisy room. */
export type ExposedDuct = {
  /** Width and height of the duct, m. */
  readonly width: number;
  readonly height: number;
  /** Length in the noisy room, m. */
  readonly length: number;
};

/**
 * Transmission loss of the walls of a rectangular duct for sound that enters it, dB in the 8 octaves 63 Hz to 8 kHz.
 *
 * Equation: above the first mode across the duct, f_1 = 6764/a, the breakout loss less 3 dB; up to it the greater of
 * R_out - 4 - 10 lg(a/b) + 20 lg(f/f_1) and 10 lg(l (1/a + 1/b)); a the longer side, a and b in inches in f_1 only,
 * elsewhere all three lengths alike. Units: m; losses dB.
 * Source: the rule of the ASHRAE Handbook, HVAC Applications (from memory); with its 6.1 m of 305 x 305 mm it gives the
 * printed row of the 2019 edition, chapter 49, Table 30 (as transcribed), within 0.5 dB.
 * Valid: as of `rectangularDuctBreakoutLoss`. Errors: ArgumentError for a dimension that can't be or a spectrum that isn't
 * 8 numbers.
 */
export function rectangularDuctBreakinLoss(
  breakoutLoss: TransmissionLoss,
  { width, height, length }: ExposedDuct,
): TransmissionLoss {
  requireDuctOctaves('breakout loss', breakoutLoss);
  requireNumber('duct width', width, { above: 0, unit: 'metres' });
  requireNumber('duct height', height, { above: 0, unit: 'metres' });
  requireNumber('duct length', length, { above: 0, unit: 'metres' });
  const a = Math.max(width, height);
  const b = Math.min(width, height);
  const firstMode = 6764 / (a / metresPerInch);
  const least = 10 * Math.log10(length * (1 / a + 1 / b));
  const octaves = ductOctaves.map((hz, octave) => {
    const out = breakoutLoss[octave]!;
    if (hz > firstMode) return out - 3;
    return Math.max(out - 4 - 10 * Math.log10(a / b) + 20 * Math.log10(hz / firstMode), least);
  });
  return asTransmissionLoss(octaves);
}
