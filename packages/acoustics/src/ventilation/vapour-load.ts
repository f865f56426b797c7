/** Water vapour given off in each zone, and that of the air outside. */
export type VapourLoad = {
  /** Vapour in the air outside, kg/m3; see `vapourDensity`. */
  readonly outside: number;
  /** Vapour given off in each zone, kg/s. */
  readonly generation: readonly number[];
};
