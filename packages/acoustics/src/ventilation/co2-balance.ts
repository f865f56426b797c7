import { requireNumber } from '../errors/require-number.js';
import { requireConcentration } from './require-concentration.js';

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
  requireConcentration('CO2 at the start', start);
  requireConcentration('CO2 of the supply air', supply);
  requireNumber('CO2 generation', generation, { atLeast: 0, unit: 'cubic metres per second' });
  requireNumber('airflow', flow, { atLeast: 0, unit: 'cubic metres per second' });
  requireNumber('air volume', volume, { above: 0, unit: 'cubic metres' });
}
