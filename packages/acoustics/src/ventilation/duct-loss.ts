/** What an element of an air path takes off the sound that travels through it. */
export type DuctLoss = {
  /** dB in the 21 bands of the working grid. */
  readonly loss: number[];
  readonly validity: DuctValidity;
};

/** Whether an input lies outside what the source covers, what was done about it, and caveats that hold anyway. */
export type DuctValidity = { readonly extrapolated: boolean; readonly notes: readonly string[] };
