import { ArgumentError } from '../errors/argument-error.js';
import { requireNumber } from '../errors/require-number.js';
import { asLevelDifference, type LevelDifference } from '../quantities/level-difference.js';
import type { TransmissionLoss } from '../quantities/transmission-loss.js';

/** A suspended ceiling over one room: area in m2 and transmission loss by band. */
export type PlenumCeiling = { readonly area: number; readonly transmissionLoss: TransmissionLoss };

/**
 * Level difference of two rooms by way of one plenum above both, dB by band.
 *
 * Equation: D = R1 + R2 + 10 lg(Ap A2/(S1 S2)): each ceiling is a wall between two diffuse fields, D = R + 10 lg(A/S). What
 * goes back from plenum to ceilings counts as absorption: Ap includes the open share of both, S 10^(-R/10).
 * Units: areas and absorption areas (of plenum and receiving room, by band) in m2.
 * Source: derived from the definition of transmission loss.
 * Valid where the plenum carries a diffuse field; a shallow plenum with much fibre falls off with distance and is better.
 * Errors: ArgumentError for lists of different length and areas that are not above 0.
 */
export function plenumLevelDifference(
  source: PlenumCeiling,
  receiving: PlenumCeiling,
  plenumAbsorption: readonly number[],
  receivingAbsorption: readonly number[],
): LevelDifference {
  requireNumber('ceiling area of the source room', source.area, { above: 0, unit: 'm2' });
  requireNumber('ceiling area of the receiving room', receiving.area, { above: 0, unit: 'm2' });
  const bands = source.transmissionLoss.length;
  for (const [what, list] of [
    ['the second ceiling', receiving.transmissionLoss],
    ['the absorption of the plenum', plenumAbsorption],
    ['the absorption of the receiving room', receivingAbsorption],
  ] as const) {
    if (list.length !== bands) throw new ArgumentError(`number of bands of ${what}`, list.length, `${bands}`);
  }
  return asLevelDifference(
    source.transmissionLoss.map((loss, band) => {
      requireNumber(`absorption of the plenum in band ${band + 1}`, plenumAbsorption[band]!, {
        atLeast: 0,
        unit: 'm2',
      });
      requireNumber(`absorption of the room in band ${band + 1}`, receivingAbsorption[band]!, { above: 0, unit: 'm2' });
      const into = source.area * 10 ** (-loss / 10);
      const outOf = receiving.area * 10 ** (-receiving.transmissionLoss[band]! / 10);
      const plenum = plenumAbsorption[band]! + into + outOf;
      return 10 * Math.log10((plenum * receivingAbsorption[band]!) / (into * outOf));
    }),
  );
}
