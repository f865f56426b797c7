import type { BandTable } from './build-up.js';
import type { Level } from './level.js';
import type { Named, Sourced, SourceRange } from './sourced.js';

/** What was measured after the build; it stands beside the prediction and changes nothing in it. */
export interface Measured extends Named {
  /** Name of the booth; undefined where the text has none that could be meant. */
  readonly booth: string | undefined;
  /** Year, month and day. */
  readonly date: Sourced<string> | undefined;
  readonly instrument: Sourced<string> | undefined;
  readonly fan: Sourced<'off' | 'low' | 'high'> | undefined;
  readonly readings: readonly MeasuredReading[];
  readonly recordings: readonly MeasuredRecording[];
}

interface ReadingBase {
  readonly range: SourceRange;
}

/** One figure or a table by band. A band left out is unknown, never zero. */
export type MeasuredLevels =
  | { readonly form: 'single'; readonly level: Sourced<Level> }
  | { readonly form: 'bands'; readonly bands: Sourced<BandTable> };

export type MeasuredReading = ReadingBase &
  (
    | { readonly kind: 'room-tone'; readonly levels: MeasuredLevels }
    | { readonly kind: 'isolation'; readonly against: string; readonly levels: MeasuredLevels }
    | { readonly kind: 'voice-outside'; readonly where: string | undefined; readonly level: Sourced<Level> }
    | {
        readonly kind: 'reverberation';
        /** s */
        readonly times:
          | { readonly form: 'single'; readonly time: Sourced<number> }
          | { readonly form: 'bands'; readonly bands: Sourced<BandTable> };
      }
    /** ppm, K, kg */
    | { readonly kind: 'co2' | 'temperature-rise' | 'mass'; readonly value: Sourced<number> }
  );

/** A WAV file below the workspace folder; it is named here and read by whoever compares. */
export interface MeasuredRecording {
  readonly range: SourceRange;
  /** Relative to the workspace folder. */
  readonly path: string;
  /** What full scale stands for; undefined when nothing is said. */
  readonly fullScale: Sourced<Level> | undefined;
}
