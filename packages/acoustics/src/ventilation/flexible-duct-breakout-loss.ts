import { requireNumber } from '../errors/require-number.js';
import { asTransmissionLoss, type TransmissionLoss } from '../quantities/transmission-loss.js';
import { ductOctaves, metresPerInch } from './duct-tables.js';

/** m of flexible duct to which the printed rule refers; most of the sound leaves in its first part. */
export const flexibleDuctReferenceLength = 3.048;

/**
 * Transmission loss of the wall of a lined, non-metallic flexible duct for sound that leaves it, dB in the 8 octaves.
 *
 * Equation: what 10 ft of it keep in is IL = 10.79 + 0.00179 f - (0.41419 + 0.0000563 f) D, D in inches, f the nominal octave in
 * Hz; R = IL + 10 lg(4 l/d), l = `flexibleDuctReferenceLength`, so that `roundDuctBreakinLoss` over that length gives what goes
 * the other way. Units: m; result dB, no less than 0.
 * Source: AHRI Standard 885-2008, Table D4, as quoted on a help page; the area ratio is the definition of R.
 * Valid: 100 to 406 mm, held at the ends; any length up to 3 m, since it is not in proportion to the length.
 * A bare hose of plastic or foil keeps less. Errors: ArgumentError for a diameter that can't be.
 *
 * @example
 * ```ts
 * import { flexibleDuctBreakoutLoss } from '@boothwright/acoustics/ventilation';
 *
 * flexibleDuctBreakoutLoss({ diameter: 0.125 })[1]; // 28.8
 * ```
 */
export function flexibleDuctBreakoutLoss({ diameter }: { readonly diameter: number }): TransmissionLoss {
  requireNumber('duct diameter', diameter, { above: 0, unit: 'metres' });
  const held = Math.min(Math.max(diameter, 0.1), 0.4064);
  const inches = held / metresPerInch;
  const areas = 10 * Math.log10((4 * flexibleDuctReferenceLength) / diameter);
  const octaves = ductOctaves.map((hz) =>
    Math.max(0, 10.79 + 0.00179 * hz - (0.41419 + 0.0000563 * hz) * inches + areas),
  );
  return asTransmissionLoss(octaves);
}
