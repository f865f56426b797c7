import { ArgumentError } from '../errors/argument-error.js';
import { requireNumber } from '../errors/require-number.js';
import type { InsertionLoss } from '../quantities/insertion-loss.js';
import type { LevelDifference } from '../quantities/level-difference.js';
import type { TransmissionLoss } from '../quantities/transmission-loss.js';

/** A shell by its whole transmission loss (see `compositeTransmissionLoss`), area in m2 and absorption area inside, m2 by band. */
export type DiffuseShell = {
  readonly area: number;
  readonly transmissionLoss: TransmissionLoss;
  readonly absorptionArea: readonly number[];
};

/**
 * Level outside less level inside of a shell in a diffuse field, dB by band.
 *
 * Equation: D = R + 10 lg(A/S), A the absorption area inside with what leaves through the shell counted in by the caller.
 * Units: m2, dB. Source: definition of the transmission loss solved for the level received (common practice).
 * Valid where both fields are diffuse, above the Schroeder frequency of the inside.
 * Errors: ArgumentError for lists of different length and areas that are not above 0.
 */
export function diffuseEnclosureLevelDifference(shell: DiffuseShell): LevelDifference {
  return overBands(shell, (passed, absorption) => absorption / passed) as LevelDifference;
}

/**
 * Insertion loss of an enclosure round a source of fixed power, dB by band: never negative.
 *
 * Equation: IL = 10 lg(1 + A/(S 10^(-R/10))), A the absorption area inside without what leaves through the shell: what the
 * source gives is absorbed inside or goes out, in proportion to these areas. For a good shell it is R + 10 lg(A/S).
 * Units: m2, dB. Source: derived from the balance of energy.
 * Valid where the inside is diffuse and the shell does not touch the source; a close-fitting one drives its panels through
 * the air between and may amplify, see `smallEnclosureLevelDifference`.
 * Errors: see `diffuseEnclosureLevelDifference`.
 */
export function enclosureInsertionLoss(shell: DiffuseShell): InsertionLoss {
  return overBands(shell, (passed, absorption) => 1 + absorption / passed) as InsertionLoss;
}

function overBands(
  { area, transmissionLoss, absorptionArea }: DiffuseShell,
  ratio: (passed: number, absorption: number) => number,
): LevelDifference | InsertionLoss {
  requireNumber('area of the shell', area, { above: 0, unit: 'm2' });
  if (absorptionArea.length !== transmissionLoss.length) {
    throw new ArgumentError('number of bands of the absorption', absorptionArea.length, `${transmissionLoss.length}`);
  }
  const values: readonly number[] = transmissionLoss.map((loss, band) => {
    requireNumber(`absorption area in band ${band + 1}`, absorptionArea[band]!, { above: 0, unit: 'm2' });
    return 10 * Math.log10(ratio(area * 10 ** (-loss / 10), absorptionArea[band]!));
  });
  return values as LevelDifference;
}
