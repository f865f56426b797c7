import type { DimensionName } from './dimension.js';

export interface UnitEntry {
  /** As the user writes it. */
  readonly unit: string;
  readonly dimension: DimensionName;
  readonly documentation: string;
  /** Offered first by completion for its dimension. */
  readonly common?: true;
}
