import type { LevelTotals, Ranged, TextRange } from './result-values.js';

/** An effort of the standard, or the full shout of a performer. */
export type VoiceEffort = 'casual' | 'normal' | 'raised' | 'loud' | 'shout' | 'full-shout';

/** The voice at one place outside the booth. */
export interface VoiceAt {
  /** Name of a neighbour; null for the room around the booth. */
  readonly place: string | null;
  readonly title: string;
  readonly side: 'room' | 'above' | 'below' | 'beside' | 'outdoors';
  readonly range: TextRange | null;
  readonly byEffort: readonly { readonly effort: VoiceEffort; readonly at1mDbA: number; readonly dBA: Ranged | null }[];
  /** At the effort of the session, a shout as the full one; null without a session or when not predicted. */
  readonly session: (LevelTotals & { readonly effort: VoiceEffort }) | null;
  /** What the text must say before it can be predicted; empty when it is. */
  readonly missing: readonly string[];
  readonly note: string;
}
