import { ArgumentError } from '../errors/argument-error.js';
import { requireNumber } from '../errors/require-number.js';
import { asTransmissionLoss, type TransmissionLoss } from '../quantities/transmission-loss.js';

/** One first-order path: into element i in the source room, over a junction, out of element j in the receiving room. */
export type FlankingPath = {
  readonly into: TransmissionLoss;
  readonly outOf: TransmissionLoss;
  /** dB by band, of linings on either element; none when absent. */
  readonly improvement?: readonly number[];
  /** dB, see `junctionVibrationIndex` */
  readonly vibrationIndex: number;
  /** m, common edge of the two elements */
  readonly junctionLength: number;
};

/** m; reference length of the vibration reduction index (ISO 12354-1, from memory). */
const referenceLength = 1;

/**
 * Flanking transmission loss of one path, referred to the separating element, dB by band.
 *
 * Equation: R_ij = (R_i + R_j)/2 + dR + K_ij + 10 lg(S/(l0 l_ij)), S the separating area, l0 = 1 m.
 * Units: m2, m, dB.
 * Source: EN 12354-1:2000 and ISO 12354-1:2017 (from memory). R_i and R_j count resonant transmission alone; below fc the
 * forced share of R makes the result too low. Valid for homogeneous elements; by band for in-situ values.
 * Errors: ArgumentError for lists of different length, or areas and lengths that are not above 0.
 */
export function flankingTransmissionLoss(path: FlankingPath, separatingArea: number): TransmissionLoss {
  requireNumber('separating area', separatingArea, { above: 0, unit: 'm2' });
  requireNumber('length of the junction', path.junctionLength, { above: 0, unit: 'metres' });
  requireNumber('vibration reduction index', path.vibrationIndex, { unit: 'decibels' });
  const bands = path.into.length;
  const same = (what: string, count: number) => {
    if (count !== bands) throw new ArgumentError(`number of bands of ${what}`, count, `${bands}`);
  };
  same('the second element', path.outOf.length);
  if (path.improvement !== undefined) same('the improvement', path.improvement.length);
  const geometry = 10 * Math.log10(separatingArea / (referenceLength * path.junctionLength));
  return asTransmissionLoss(
    path.into.map(
      (loss, band) => (loss + path.outOf[band]!) / 2 + (path.improvement?.[band] ?? 0) + path.vibrationIndex + geometry,
    ),
  );
}

/**
 * Apparent transmission loss with direct sound and flanking paths, all referred to the separating area, dB by band.
 *
 * Equation: R' = -10 lg sum(10^(-R/10)). Source: EN 12354-1:2000 (from memory). Never above the smallest of them.
 * Errors: ArgumentError without paths or with lists of different length.
 */
export function transmissionLossWithFlanking(paths: readonly TransmissionLoss[]): TransmissionLoss {
  const first = paths[0];
  if (first === undefined) throw new ArgumentError('number of paths', 0, 'at least one');
  for (const path of paths) {
    if (path.length !== first.length)
      throw new ArgumentError('number of bands of a path', path.length, `${first.length}`);
  }
  return asTransmissionLoss(
    first.map((_, band) => 0 - 10 * Math.log10(paths.reduce((sum, path) => sum + 10 ** (-path[band]! / 10), 0))),
  );
}
