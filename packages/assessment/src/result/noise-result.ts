import type { ByBand, LevelTotals, Ranged, TextRange, Verdict } from './result-values.js';

/** How the fans run. */
export type FanSettingName = 'off' | 'low' | 'high';

/** What the inside hears at one setting of the fans; without a fan there is only `off`. */
export interface NoiseAtFanSetting {
  readonly setting: FanSettingName;
  /** True for the setting of the session. */
  readonly session: boolean;
  /** Share of full speed, 0..1, of the fastest fan. */
  readonly speed: number;
  /** Null when off or when no fan states its sound power. */
  readonly fan: LevelTotals | null;
  /** Air in ducts, their bends and mazes; null where no flow is known. */
  readonly airInDucts: LevelTotals | null;
  /** Its hiss where it enters and leaves the booth; null where no flow is known. Dampers are not in it. */
  readonly airAtOpenings: LevelTotals | null;
  /** All airborne sources of the worst hour, equipment, fans and air. */
  readonly total: LevelTotals;
  readonly roomToneDbFS: Ranged | null;
}

/** A fan's or the air's way into the booth, at the setting of the session. */
export interface FanPart {
  readonly vent: string;
  /** `duct`: along its own duct; `room`: out into the room and in through the whole booth. */
  readonly way: 'duct' | 'room';
  readonly byBand: ByBand;
}

/** What the air of a vent is heard by, at the setting of the session. */
export interface AirPart {
  readonly vent: string;
  /** `duct`: its run, bends and maze; `grille` or `duct-end`: where it opens into the booth. */
  readonly way: 'duct' | 'grille' | 'duct-end';
  readonly byBand: ByBand;
}

/** Something inside that hums, where the microphone stands. */
export interface EquipmentNoise {
  readonly name: string;
  readonly range: TextRange;
  readonly atMicrophone: LevelTotals;
  /** m to the microphone; null when the text has none, then only the reverberant part counts. */
  readonly distanceM: number | null;
}

/** Springs under the booth, from the mass that really stands on them. */
export interface MountsResult {
  readonly range: TextRange;
  readonly count: number;
  readonly stiffnessNPerM: number;
  readonly loadedMassKg: number;
  readonly deflectionM: number;
  readonly naturalHz: number;
  /** Above this they pass on less than a rigid contact, on a rigid floor. */
  readonly gainsAboveHz: number;
  readonly text: string;
}

/** Room tone as a recording shows it, and everything that the figure rests on. */
export interface RoomTone {
  readonly dBFS: Ranged;
  /** The same chain read with A-weighting; null when no band is known. */
  readonly weightedDbFS: number | null;
  readonly voiceAtCapsuleDbZ: number;
  readonly noiseAtCapsuleDbZ: number;
  readonly voiceSetToDbFS: number;
  readonly effort: string;
  readonly distanceM: number;
  readonly highPassHz: number | null;
  readonly pattern: string;
  /** What the polar pattern takes off, dB by band. */
  readonly patternRejectionDb: readonly number[];
  /** Noise of the room at the capsule, after pattern and filter, dB. */
  readonly roomByBand: ByBand;
  /** Own noise of the microphone, unweighted, 20 Hz to 20 kHz; null when not given. */
  readonly selfNoiseDbZ: number | null;
  /** Share 0..1 of the unweighted noise energy by octave 63 Hz to 4 kHz, and of the microphone. */
  readonly shares: { readonly octaves: readonly number[]; readonly microphone: number };
  /** The figure with other high-pass filters; null is none. */
  readonly filters: readonly { readonly highPassHz: number | null; readonly dBFS: number }[];
  readonly assumptions: readonly string[];
  readonly note: string;
}

/** Which hours are quiet enough. `stateOfHour` has 24 entries, 0 is midnight to one o'clock, each an index into `states`. */
export interface HoursResult {
  readonly stateOfHour: readonly number[];
  /** Every mix of sources that occurs. */
  readonly states: readonly {
    readonly sources: readonly string[];
    /** Structure-borne sources that are there and not predicted. */
    readonly notPredicted: readonly string[];
    readonly dBA: Ranged | null;
    readonly nc: string | null;
    /** In the order of `requirements`. */
    readonly verdicts: readonly Verdict[];
  }[];
  readonly requirements: readonly {
    readonly text: string;
    readonly range: TextRange;
    readonly hoursMet: number;
    /** `22:00 to 06:00`; empty when no hour meets it. */
    readonly met: readonly string[];
    readonly words: string;
  }[];
  /** The session within the day; null when the text does not say when it starts. */
  readonly session: {
    readonly startsMinutes: number;
    readonly endsMinutes: number;
    readonly verdicts: readonly Verdict[];
    readonly words: string;
  } | null;
}

/** Where each model of the low bands holds. */
export interface LowBands {
  /** Up to here the air inside is one spring, Hz. */
  readonly closedBoxToHz: number;
  readonly firstModeHz: number;
  readonly schroederHz: number;
  /** First resonance of the leaf of a face that swings lowest, as a whole face and held at every stud, Hz. */
  readonly panels: readonly { readonly face: string; readonly wholeHz: number; readonly betweenStudsHz: number }[];
  /** Where walls and air inside swing together and the booth keeps out least, Hz; null when not found below the limit. */
  readonly breathing: { readonly hz: number; readonly differenceDb: number } | null;
  /**
   * Which model decides, by runs of neighbouring bands. `lessDb` is how much the other model would keep out more, at
   * most; null where only one model holds.
   */
  readonly decidedBy: readonly {
    readonly model: 'closed-box' | 'walls-and-absorption';
    readonly fromHz: number;
    readonly toHz: number;
    readonly lessDb: number | null;
  }[];
  /** The same in words, with the reason. */
  readonly decidedText: string;
  /** Widest half-width of the level difference among the bands, dB: up to 100 Hz, and from 200 Hz to 1.25 kHz. */
  readonly halfWidthTo100HzDb: number;
  readonly halfWidthMidDb: number;
  readonly text: string;
}
