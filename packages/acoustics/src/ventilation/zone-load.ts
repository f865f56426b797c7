/** What is given off in each zone, and the air that is supplied. */
export type ZoneLoad = {
  /** Concentration outside, ppm. */
  readonly outside: number;
  /** Carbon dioxide given off in each zone, m3/s. */
  readonly generation: readonly number[];
};
