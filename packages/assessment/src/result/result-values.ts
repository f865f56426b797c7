// What the parts of the result document are made of.

export type ByBand = readonly (number | null)[];

/** A predicted figure with its range; `basis` names what the range rests on. */
export interface Ranged {
  readonly value: number;
  readonly low: number;
  readonly high: number;
  readonly basis: string;
}

export interface TextRange {
  readonly file: string;
  readonly from: number;
  readonly to: number;
}

export interface LevelTotals {
  readonly byBand: ByBand;
  readonly dBA: Ranged | null;
  readonly dBZ: Ranged | null;
  readonly nc: { readonly value: number | null; readonly text: string; readonly governingHz: number | null } | null;
}

export type Verdict = 'met' | 'missed' | 'not-assessed';
