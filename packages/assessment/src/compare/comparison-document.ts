import type { Caution, Finding, UnreadPart } from '../result/result-document.js';
import type { TextRange, Verdict } from '../result/result-values.js';

/**
 * What changed between two specifications and what that does: what `compareAssessed` returns and what
 * `compare --format json` prints. Lists stand with the largest effect first.
 */
export interface ComparisonDocument {
  readonly schema: 'boothwright-comparison/1';
  readonly old: ComparedName;
  readonly new: ComparedName;
  /** True when nothing that is declared differs, names of materials and build-ups aside. */
  readonly sameFacts: boolean;
  /** True when no verdict, figure, finding, caution or hazard differs. */
  readonly sameEffect: boolean;
  readonly facts: readonly FactChange[];
  readonly renamed: readonly Renamed[];
  readonly requirements: readonly RequirementChange[];
  readonly effects: readonly Effect[];
  readonly bands: readonly BandChange[];
  readonly findings: ToldChanges<Finding>;
  readonly cautions: ToldChanges<Caution>;
  /** By which step each effect is measured. */
  readonly steps: readonly SmallestStep[];
}

export interface ComparedName {
  /** As whoever asks names it, e.g. `main:booth.booth`. */
  readonly name: string;
  readonly variant: string | null;
  /** Parts of the text that could not be read: what depends on them is not judged on this side. */
  readonly unread: readonly UnreadPart[];
}

/** A declared fact that differs. */
export interface FactChange {
  /** `booth box, wall shell, layer 2`. */
  readonly place: string;
  /** `gypsum-board`, `gap threshold`; empty where the place says it all. */
  readonly what: string;
  /** Null where it is not there. */
  readonly old: string | null;
  readonly new: string | null;
  /** Where it stands in the text of each side; null where it is not there. */
  readonly oldRange: TextRange | null;
  readonly newRange: TextRange | null;
}

export interface Renamed {
  readonly kind: 'material' | 'assembly';
  readonly old: string;
  readonly new: string;
}

export interface JudgedSide {
  readonly text: string;
  readonly verdict: Verdict;
  readonly value: number | null;
  readonly limit: number;
  readonly margin: number | null;
  /** True where the value is a lower bound. */
  readonly atLeast: boolean;
}

/**
 * `lost`: was met and is not any more; `gained`: is met now; `worse`, `better`: the verdict stays missed or met and the margin
 * moves; `other`: another change of verdict; `added`, `dropped`: asked on one side only.
 */
export type RequirementTurn = 'lost' | 'gained' | 'other' | 'dropped' | 'added' | 'worse' | 'better';

export interface RequirementChange {
  readonly turn: RequirementTurn;
  readonly kind: string;
  readonly booth: string | null;
  readonly unit: string;
  readonly old: JudgedSide | null;
  readonly new: JudgedSide | null;
  readonly limitChanged: boolean;
  /** How far the margin moved, in smallest steps that matter; null where one side has none. */
  readonly steps: number | null;
}

/** A figure that differs. */
export interface Effect {
  /** The booth or build-up, by its new name. */
  readonly of: string;
  readonly topic: Topic;
  readonly what: string;
  readonly unit: string;
  /** Null where it is not known. */
  readonly old: number | null;
  readonly new: number | null;
  /** Null where more is neither. */
  readonly turn: 'better' | 'worse' | null;
  /** The difference in smallest steps that matter; null where one side is not known. */
  readonly steps: number | null;
}

export type Topic = 'rating' | 'noise' | 'recording' | 'voice' | 'decay' | 'air' | 'warmth' | 'mass' | 'size' | 'cost';

/** A curve that differs, with the band in which it differs most. */
export interface BandChange {
  readonly of: string;
  readonly what: string;
  readonly unit: string;
  readonly largestHz: number | null;
  readonly hz: readonly number[];
  readonly old: readonly (number | null)[];
  readonly new: readonly (number | null)[];
  readonly turn: 'better' | 'worse' | null;
  readonly steps: number | null;
}

export interface ToldChanges<T> {
  readonly gained: readonly T[];
  readonly lost: readonly T[];
  /** Told on both sides, with other words or figures. */
  readonly changed: readonly { readonly old: T; readonly new: T }[];
}

/** The smallest difference that matters, to put differences of different units in order. */
export interface SmallestStep {
  readonly unit: string;
  readonly size: number;
  /** True when `size` is a share of the larger of the two figures. */
  readonly relative: boolean;
  readonly evidence: 'judgement' | 'common practice';
  readonly why: string;
}
