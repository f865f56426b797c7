/** What an element of an air path takes off the sound that travels through it. */
export type DuctLoss = {
  /** dB in the 21 bands of the working grid. */
  readonly loss: number[];
  readonly validity: DuctValidity;
};

/** Whether an input lies outside what the source covers, and what was done about it. */
export type DuctValidity = { readonly extrapolated: boolean; readonly notes: readonly string[] };
