import type { InsertionLoss } from '../quantities/insertion-loss.js';

/** What an element of an air path takes off the sound that travels through it. */
export type DuctLoss = {
  /** dB in the 21 bands of the working grid. */
  readonly loss: InsertionLoss;
  readonly validity: DuctValidity;
};

/** Whether an input lies outside what the source covers, what was done about it, and caveats that hold anyway. */
export type DuctValidity = { readonly extrapolated: boolean; readonly notes: readonly string[] };

/** The same in the octaves 63 Hz to 8 kHz, in which the sources state it. */
export type DuctOctaveLoss = {
  /** dB in the 8 octaves of `ductOctaves`. */
  readonly octaves: InsertionLoss;
  readonly validity: DuctValidity;
};
