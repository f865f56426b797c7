import { requireNotNegative, requirePositive } from '../rooms/require-positive.js';

/** Carbon dioxide in one well-mixed space with one air supply. */
export type Co2Balance = {
  /** Concentration at the start, ppm. */
  readonly start: number;
  /** Concentration of the supplied air, ppm. */
  readonly supply: number;
  /** Carbon dioxide given off by the people inside, m3/s. */
  readonly generation: number;
  /** Air supplied, m3/s. */
  readonly flow: number;
  /** Air volume of the space, m3. */
  readonly volume: number;
};

/** Rejects a balance with a quantity that can't be. */
export function requireCo2Balance({ start, supply, generation, flow, volume }: Co2Balance): void {
  requireNotNegative('CO2 at the start', start);
  requireNotNegative('CO2 of the supply air', supply);
  requireNotNegative('CO2 generation', generation);
  requireNotNegative('airflow', flow);
  requirePositive('air volume', volume);
}
