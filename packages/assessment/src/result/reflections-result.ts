import type { TextRange } from './result-values.js';

/** What reaches the microphone from the mouth besides the direct sound. */
export interface ReflectionsResult {
  readonly mouthM: readonly [number, number, number];
  /** False where the text does not place the mouth and it is put at the distance of the microphone. */
  readonly mouthStated: boolean;
  readonly microphoneM: readonly [number, number, number];
  readonly directM: number;
  /** Stronger than this a reflection is told of, dB re the direct sound. */
  readonly limitDb: number;
  /** Of first order within 10 ms of the direct sound, strongest first. */
  readonly early: readonly EarlyReflectionResult[];
  /** Null where it can't be told, and `responseWhy` says why. */
  readonly response: MouthToMicrophone | null;
  readonly responseWhy: string | null;
  /** Mouth and microphone shifted together; empty where the response is null or the booth leaves no other place. */
  readonly places: readonly PlaceResult[];
  /** Null where no place gains enough. */
  readonly best: BestPlace | null;
  readonly loudspeakers: readonly LoudspeakerResult[];
  readonly leavesOut: readonly string[];
}

export interface EarlyReflectionResult {
  readonly name: string;
  readonly kind: 'face' | 'door' | 'window' | 'equipment';
  readonly range: TextRange;
  readonly atM: readonly [number, number, number];
  readonly delayMs: number;
  readonly pathDifferenceM: number;
  /** Of what it meets, 500 Hz to 2 kHz. */
  readonly absorption: number;
  /** Re the direct sound. */
  readonly levelDb: number;
  readonly firstNullHz: number;
  readonly peakDb: number;
  /** Null where it cancels the direct sound altogether. */
  readonly dipDb: number | null;
  readonly strong: boolean;
  /** The same behind a cover that takes 80 %; null where it absorbs as much already. */
  readonly covered: { readonly levelDb: number; readonly peakDb: number; readonly dipDb: number | null } | null;
  readonly todo: string;
}

export interface MouthToMicrophone {
  readonly hz: readonly number[];
  /** Re the direct sound alone. */
  readonly levelDb: readonly number[];
  /** Standard deviation, 60 to 300 Hz. */
  readonly spreadDb: number;
  readonly deepest: { readonly hz: number; readonly levelDb: number };
  readonly highest: { readonly hz: number; readonly levelDb: number };
}

export interface PlaceResult {
  readonly microphoneM: readonly [number, number, number];
  readonly spreadDb: number;
  /** Null where no reflection is above -40 dB. */
  readonly strongestDb: number | null;
}

export interface BestPlace extends PlaceResult {
  readonly spreadHereDb: number;
  readonly text: string;
}

export interface LoudspeakerResult {
  readonly name: string;
  readonly range: TextRange;
  readonly nearest: string;
  readonly distanceM: number;
  readonly firstCancellationHz: number;
  readonly text: string;
}
