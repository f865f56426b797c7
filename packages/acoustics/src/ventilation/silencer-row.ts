import type { InsertionLoss } from '../quantities/insertion-loss.js';

/** A laboratory measurement of a splitter silencer. */
export type SilencerRow = {
  readonly id: string;
  readonly description: string;
  /** Free width between two splitters and thickness of a splitter, m. */
  readonly airway: number;
  readonly splitter: number;
  /** m */
  readonly length: number;
  /** Insertion loss in the 21 thirds 50 Hz to 5 kHz, dB. */
  readonly insertionLoss: InsertionLoss;
  /** Author, title, year, table. */
  readonly source: string;
};
