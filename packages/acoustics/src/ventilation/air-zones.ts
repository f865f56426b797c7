/** Well-mixed spaces that exchange air with each other and with outside. */
export type AirZones = {
  /** Air volume of each zone, m3. */
  readonly volumes: readonly number[];
  /** `between[i][j]`: airflow from zone i into zone j, m3/s. */
  readonly between: readonly (readonly number[])[];
  /** Airflow from outside into each zone, m3/s. The same balance leaves it, so nothing more need be said of it. */
  readonly fromOutside: readonly number[];
};
