import { requireNumber } from '../errors/require-number.js';
import { asTransmissionLoss, type TransmissionLoss } from '../quantities/transmission-loss.js';
import { ductOctaves, metresPerInch } from './duct-tables.js';

/** The wall of a rectangular duct of sheet metal. */
export type RectangularDuctWall = {
  /** Width and height of the duct, m. */
  readonly width: number;
  readonly height: number;
  /** Mass of the sheet, kg/m2. */
  readonly surfaceMass: number;
};

const kilogramsPerPound = 0.45359237;

/**
 * Transmission loss of the walls of a rectangular duct for sound that leaves it, dB in the 8 octaves 63 Hz to 8 kHz.
 *
 * Equation: 10 lg(f q^2/(a + b)) + 17 below f_L = 24134/sqrt(a b), 20 lg(q f) - 31 from there, no more than 45 dB;
 * q in lb/ft2, a and b in inches, f the nominal octave in Hz. No less than 0 dB.
 * Units: m, kg/m2; result dB.
 * Source: the rule of the ASHRAE Handbook, HVAC Applications (from memory); it gives the printed row for 305 x 305 mm of
 * 24 gauge, 2019 edition, chapter 49, Table 29 (as transcribed), within 0.5 dB.
 * Valid: sheet metal, 0.6 to 1.6 mm, without lagging. Round and spiral ducts keep far more in: `ductWallRows`.
 * Errors: ArgumentError for a quantity that can't be.
 */
export function rectangularDuctBreakoutLoss({ width, height, surfaceMass }: RectangularDuctWall): TransmissionLoss {
  requireNumber('duct width', width, { above: 0, unit: 'metres' });
  requireNumber('duct height', height, { above: 0, unit: 'metres' });
  requireNumber('mass of the duct wall', surfaceMass, { above: 0, unit: 'kg/m2' });
  const [a, b] = [width / metresPerInch, height / metresPerInch];
  const mass = (surfaceMass * 0.3048 ** 2) / kilogramsPerPound;
  const limit = 24134 / Math.sqrt(a * b);
  const octaves = ductOctaves.map((hz) => {
    const loss = hz < limit ? 10 * Math.log10((hz * mass ** 2) / (a + b)) + 17 : 20 * Math.log10(mass * hz) - 31;
    return Math.min(45, Math.max(0, loss));
  });
  return asTransmissionLoss(octaves);
}
