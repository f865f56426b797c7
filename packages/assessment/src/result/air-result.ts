import type { TextRange } from './result-values.js';

/** At which setting the fans run. */
export type FanSettingOfAir = 'off' | 'low' | 'high';

/** The way of the air, its speed and the pressure that it takes; told whether there is a session or not. */
export interface VentilationResult {
  /**
   * `no-fan`; `no-way-out`: a fan and no second opening; `vents`: vents without a fan let the air go on; `series`: fans on both
   * sides; `gaps`: the air goes through gaps and holes.
   */
  readonly way: 'no-fan' | 'no-way-out' | 'vents' | 'series' | 'gaps';
  /** What is assumed of the way, in a sentence; empty where nothing is. */
  readonly wayNote: string;
  /** m2 of door gaps, slits, holes and open faces. */
  readonly gapAreaM2: number;
  /** Null without a fan whose air has a way. */
  readonly low: FlowResult | null;
  readonly high: FlowResult | null;
  readonly vents: readonly VentAirResult[];
}

/** One setting of the fans. */
export interface FlowResult {
  /** Null where the curve of a fan never meets its path; `notes` says so. */
  readonly flowM3PerS: number | null;
  /** What the hardest worked fan must give at that flow: its own vent and the way on the other side. */
  readonly neededPa: number | null;
  /** What its curve gives there; null without a curve. */
  readonly givenPa: number | null;
  /** Booth against the room; below zero it draws air in through every leak. */
  readonly boothPressurePa: number | null;
  /** Air through the gaps, where they are its way. */
  readonly gapSpeedMPerS: number | null;
  readonly notes: readonly string[];
}

export interface VentAirResult {
  readonly name: string;
  readonly range: TextRange;
  readonly direction: 'in' | 'out' | null;
  /** False where the text does not say which way a fan blows, so that the direction is assumed. */
  readonly directionStated: boolean;
  readonly opensTo: 'room' | 'outdoors' | 'next-room' | 'appliance-room';
  readonly flowLowM3PerS: number | null;
  readonly flowHighM3PerS: number | null;
  /** Clear cross-sections from the room towards the booth, with the speed in them. */
  readonly sections: readonly {
    readonly part: 'duct' | 'chamber' | 'maze' | 'grille';
    readonly areaM2: number;
    readonly lowMPerS: number | null;
    readonly highMPerS: number | null;
  }[];
  /** What each part takes at full speed, Pa; empty where no flow is known. */
  readonly pressure: readonly {
    readonly part: 'ends' | 'duct' | 'bends' | 'chambers' | 'maze' | 'grille';
    readonly pa: number;
  }[];
  /** What each part takes off the sound on its way in, dB by band; the sum is held at what sound goes round. */
  readonly sound: readonly {
    readonly part: 'duct' | 'bends' | 'chambers' | 'maze' | 'end';
    readonly lossDb: readonly number[];
  }[];
  readonly soundLossDb: readonly number[];
}

export interface AirCurve {
  readonly fan: 'on' | 'off';
  readonly setting: FanSettingOfAir;
  readonly flowM3PerS: number;
  readonly minutes: readonly number[];
  readonly ppm: readonly number[];
  readonly steadyPpm: number | null;
  readonly endPpm: number;
  /** Minutes until the level is passed; null when it never is within 24 h. */
  readonly minutesTo: Readonly<Record<'1000' | '1500' | '2500' | '5000', number | null>>;
}

export interface AirResult {
  readonly volumeM3: number;
  readonly people: number;
  readonly generationM3PerS: number;
  readonly breath: BreathResult;
  /** Of the air that the vents bring, at the end of the session. */
  readonly supplyPpm: number;
  /** In booth and room when the door closes. */
  readonly startPpm: number;
  readonly sessionMinutes: number;
  /** Which setting the session asks for; what is judged. */
  readonly judged: FanSettingOfAir;
  /** The fans at the setting of the session, at full speed where it says `off`; null where no air passes or none is known. */
  readonly fanOn: AirCurve | null;
  readonly fanOff: AirCurve;
  readonly fanLow: AirCurve | null;
  readonly fanHigh: AirCurve | null;
  readonly ductSpeeds: readonly { readonly vent: string; readonly mPerS: number }[];
  readonly supply: SupplyResult;
  readonly takes: TakesResult | null;
  /** Null where it cannot be said; `heatNote` says why. */
  readonly heat: HeatResult | null;
  readonly heatNote: string | null;
  readonly moisture: MoistureResult | null;
}

/** What one person breathes out, and why so much. */
export interface BreathResult {
  readonly perPersonM3PerS: number;
  /** Of the voice. */
  readonly effort: string;
  /** What the effort is taken for, met; null where the text states the rate. */
  readonly activityMet: number | null;
  /** The rate at least and at most, as shares of it. */
  readonly lowShare: number;
  readonly highShare: number;
}

export interface SupplyResult {
  /** `fixed`: the air supplied stays as it is; `two-zones`: the booth draws on a room that fills up with it. */
  readonly model: 'fixed' | 'two-zones';
  readonly roomVolumeM3: number | null;
  readonly roomFreshAirM3PerS: number | null;
  /** The room at the end of the session, at the setting of the session. */
  readonly roomEndPpm: number | null;
  readonly note: string;
}

/** Takes with the door shut and rests with it open, again and again. */
export interface TakesResult {
  readonly takeMinutes: number;
  readonly restMinutes: number;
  readonly fanInTake: 'on' | 'off';
  /** Each way through the open door, from an assumed difference of temperature; null without a door. */
  readonly doorExchangeM3PerS: number | null;
  /** Takes that begin within the session. */
  readonly takes: number;
  /** At the end of the first and of the last take of the session. */
  readonly firstPeakPpm: number;
  readonly lastPeakPpm: number;
  /** At the end of every take when it goes on and on; null where it never settles. */
  readonly repeatingPeakPpm: number | null;
  /** Whole minutes of a take, with the same rests, whose repeating peak stays at or below the level; up to 240. */
  readonly longestTakeMinutes: Readonly<Record<'1000' | '1500', number>>;
  readonly note: string;
}

export interface HeatResult {
  /** Dry heat of people and equipment, W; heat that leaves as moisture is not in it. */
  readonly gainsW: number;
  readonly peopleW: number;
  readonly equipmentW: number;
  /** Heat through the faces, W/K. */
  readonly conductanceWPerK: number;
  /** Of the air and of the boards behind the linings, J/K. */
  readonly airCapacityJPerK: number;
  readonly boardCapacityJPerK: number;
  readonly bySetting: readonly {
    readonly setting: FanSettingOfAir;
    readonly endRiseK: number;
    readonly steadyRiseK: number | null;
    /** The slow part, after which 63 % of what remains is reached. */
    readonly timeConstantMinutes: number | null;
    readonly minutes: readonly number[];
    readonly riseK: readonly number[];
  }[];
  readonly note: string;
}

export interface MoistureResult {
  /** Water breathed out and given off by the skin, kg/s. */
  readonly generationKgPerS: number;
  readonly bySetting: readonly {
    readonly setting: FanSettingOfAir;
    /** 0..1 at the end of the session */
    readonly endRelativeHumidity: number;
    readonly endDewPointC: number;
    /** Cold surface above the dew point; below zero water condenses on it. Null where no cold surface is stated. */
    readonly coldSurfaceMarginK: number | null;
  }[];
  readonly note: string;
}
