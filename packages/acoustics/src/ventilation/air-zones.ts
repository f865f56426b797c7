/** Well-mixed spaces that exchange air with each other and with outside. */
export type AirZones = {
  /** Air volume of each zone, m3. */
  readonly volumes: readonly number[];
  /** `between[i][j]`: airflow from zone i into zone j, m3/s. */
  readonly between: readonly (readonly number[])[];
  /** Airflow from outside into each zone, m3/s. What a zone gets and doesn't give to others leaves it for outside; it can't give more than it gets. */
  readonly fromOutside: readonly number[];
};
