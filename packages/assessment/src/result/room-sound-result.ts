import type { TextRange } from './result-values.js';

/** How the decay of a band is found: single modes, a diffuse field, both near the limit between them, a dry field, or not at all. */
export type DecayMethod = 'modes' | 'statistical' | 'both' | 'dry' | 'none';

/** Decay of one third-octave band, from the mouth to the microphone. */
export interface BandDecay {
  readonly hz: number;
  /** s for 60 dB; null where nothing can be said. */
  readonly seconds: number | null;
  readonly lowS: number | null;
  readonly highS: number | null;
  readonly method: DecayMethod;
  /** What limits it, in words; empty where nothing does. */
  readonly note: string;
}

/** A mode of the lined box. */
export interface RoomMode {
  readonly hz: number;
  readonly order: readonly [number, number, number];
  /** s for 60 dB; null when it is damped by nothing. */
  readonly decayS: number | null;
  /** Range of that time; null with it. */
  readonly lowS: number | null;
  readonly highS: number | null;
  /** Voices whose fundamental it can carry. */
  readonly onVoice: readonly ('low-voice' | 'high-voice')[];
}

/** How the booth sounds inside. */
export interface RoomSoundResult {
  readonly range: TextRange;
  /** One per band of the grid. */
  readonly decay: readonly BandDecay[];
  /** Mean of the third octaves from 500 Hz to 2 kHz, s; null where one of them is not known. */
  readonly mid: { readonly seconds: number; readonly lowS: number; readonly highS: number } | null;
  /** Decay over the mean of the middle bands; null where either is not known. */
  readonly ratio125: number | null;
  readonly ratio250: number | null;
  /** Up to 300 Hz, ascending. */
  readonly modes: readonly RoomMode[];
  /** Two or more modes within 5 %. */
  readonly clusters: readonly { readonly fromHz: number; readonly toHz: number; readonly count: number }[];
  /** A third of an octave or more without a mode, above the first. */
  readonly gaps: readonly { readonly fromHz: number; readonly toHz: number }[];
  /** Size of the air between the linings at their mean depth, m. */
  readonly airM: readonly [number, number, number];
  /** What was assumed, in sentences. */
  readonly assumes: readonly string[];
}
