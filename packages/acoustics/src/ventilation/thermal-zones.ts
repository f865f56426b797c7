import type { AirZones } from './air-zones.js';

/** Well-mixed spaces that exchange air and heat with each other and with outside. */
export type ThermalZones = AirZones & {
  /** Heat that warms each zone by a kelvin, J/K: its air and what follows the air within the time looked at. */
  readonly heatCapacities: readonly number[];
  /** `conductances[i][j]`: heat through the walls between zones i and j, W/K, the same both ways; 0 with itself. */
  readonly conductances: readonly (readonly number[])[];
  /** Heat through the walls to outside, W/K. */
  readonly toOutside: readonly number[];
};

/** What warms each zone, and how warm it is outside. */
export type HeatLoad = {
  /** degC */
  readonly outside: number;
  /** Heat given off in each zone, W; below 0 where heat is taken out. */
  readonly gains: readonly number[];
};
