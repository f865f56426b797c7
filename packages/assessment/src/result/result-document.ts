import type { AirResult, VentilationResult } from './air-result.js';
import type { PanelResult } from './build-result.js';
import type { MovingResult } from './moving-result.js';
import type {
  AirPart,
  EquipmentNoise,
  FanPart,
  HoursResult,
  LowBands,
  MountsResult,
  NoiseAtFanSetting,
  RoomTone,
} from './noise-result.js';
import type {
  FittingResult,
  LengthLayout,
  PartResult,
  SealingResult,
  SheetLayout,
  ShoppingResult,
  StructureResult,
} from './parts-result.js';
import type { ReflectionsResult } from './reflections-result.js';
import type { ByBand, LevelTotals, Ranged, TextRange, Verdict } from './result-values.js';
import type { RoomSoundResult } from './room-sound-result.js';
import type { VoiceAt } from './voice-result.js';

export type { ByBand, LevelTotals, Ranged, TextRange, Verdict } from './result-values.js';

/**
 * The result document: what `assess` returns and what `check --format json` prints.
 * Units are in the key (`Hz`, `Kg`, `Db` ...) or in the schema; arrays `byBand` follow `grid.nominalHz`.
 * A `null` in a band array means "not known" or "not assessed", never zero.
 */
export interface ResultDocument {
  readonly schema: 'boothwright-result/1';
  readonly file: string;
  readonly grid: { readonly kind: 'third-octave'; readonly nominalHz: readonly number[] };
  readonly air: AirConditions;
  readonly assemblies: Readonly<Record<string, AssemblyResult>>;
  readonly booths: Readonly<Record<string, BoothResult>>;
  readonly requirements: readonly RequirementResult[];
  readonly findings: readonly Finding[];
  readonly cautions: readonly Caution[];
  /** Parts of the text that could not be read; nothing that depends on them is judged. */
  readonly unread: readonly UnreadPart[];
  /** Every default that entered, by name. */
  readonly defaults: readonly DefaultUsed[];
  /** What the prediction leaves out, in sentences. */
  readonly leavesOut: readonly string[];
  readonly variants: Readonly<Record<string, VariantResult>>;
  /** Comments of the text that allow a finding or a caution, which then stands here and nowhere else. */
  readonly allowances: readonly AllowanceResult[];
}

/** `# allow ID: reason`, and what became of it. */
export interface AllowanceResult {
  readonly id: string;
  /** Null when there is nothing of that name. */
  readonly kind: 'finding' | 'caution' | null;
  readonly reason: string;
  /** The identifier in the comment. */
  readonly range: TextRange;
  /** `refused`: a hazard that no comment can allow; `unused`: nothing of that name is told at its line. */
  readonly state: 'allowed' | 'refused' | 'unused' | 'unknown';
  /** The hazards or findings that it allows, in the base or a variant. */
  readonly told: readonly string[];
  /** Why it has no effect; empty when it has. */
  readonly note: string;
}

/** An error of the text, by the declaration that it stands in; `outside` is a line outside every declaration. */
export interface UnreadPart {
  readonly part: string;
  readonly name: string | null;
  readonly message: string;
  readonly range: TextRange;
}

export interface AirConditions {
  readonly temperatureC: number;
  readonly relativeHumidity: number;
  readonly densityKgPerM3: number;
  readonly soundSpeedMPerS: number;
}

export interface SingleNumberRatings {
  readonly stc: number;
  readonly stcGovernedBy: 'sum' | 'single-band';
  readonly rw: number;
  readonly c: number;
  readonly ctr: number;
  readonly c50To5000: number;
  readonly ctr50To5000: number;
}

export interface AssemblyResult {
  readonly title: string | null;
  readonly range: TextRange;
  /** The size for which the curve holds. */
  readonly panel: { readonly widthM: number; readonly heightM: number };
  readonly transmissionLossDb: readonly number[];
  /** Half-width of the range of the model, per band. */
  readonly transmissionLossRangeDb: readonly number[];
  /**
   * Ends of the range per band; above a practical ceiling the lower end falls back to it, and the value is the upper. The
   * lower end stops at 0 dB.
   */
  readonly transmissionLossLowDb: readonly number[];
  readonly transmissionLossHighDb: readonly number[];
  /** The part that goes straight through, and the part through the frame; null without a frame connection. */
  readonly airbornePathDb: readonly number[];
  readonly framePathDb: readonly number[] | null;
  readonly ratings: SingleNumberRatings;
  readonly surfaceMassKgPerM2: number;
  readonly thicknessM: number;
  /** Mass-air-mass and further cavity resonances, ascending. */
  readonly resonancesHz: readonly number[];
  readonly criticalFrequenciesHz: readonly { readonly layer: string; readonly hz: number }[];
  readonly leaves: number;
  /** Diffuse absorption of the inner face. */
  readonly insideAbsorption: readonly number[];
  readonly layers: readonly {
    readonly text: string;
    readonly thicknessM: number;
    readonly surfaceMassKgPerM2: number;
    readonly model: string;
    readonly range: TextRange;
  }[];
  /** Mass for the panel's share of price is not known; null unless every layer has a price per area. */
  readonly pricePerM2: { readonly amount: number; readonly currency: string } | null;
}

export type BandModel = 'small-enclosure' | 'hand-over' | 'few-modes' | 'statistical' | 'not-assessed';

export interface PathResult {
  readonly id: string;
  readonly kind: 'face' | 'door' | 'door-seal' | 'window' | 'vent' | 'slit' | 'hole';
  readonly name: string;
  readonly range: TextRange;
  readonly areaM2: number;
  /** Referred to `areaM2`; may be negative for a slit. */
  readonly transmissionLossDb: readonly number[];
  /** What the source of the figures does not cover, in words; mostly empty. */
  readonly notes: readonly string[];
}

export interface BoothResult {
  readonly title: string | null;
  readonly range: TextRange;
  readonly geometry: {
    readonly insideM: readonly [number, number, number];
    readonly outsideM: readonly [number, number, number];
    readonly usableM: readonly [number, number, number];
    readonly volumeM3: number;
    readonly footprintM2: number;
  };
  readonly firstModeHz: number;
  readonly schroederHz: number;
  readonly modesHz: readonly { readonly hz: number; readonly order: readonly [number, number, number] }[];
  /** Which model speaks in which band. */
  readonly bandModels: readonly BandModel[];
  readonly compositeTransmissionLossDb: readonly number[];
  readonly ratings: SingleNumberRatings;
  readonly paths: readonly PathResult[];
  readonly noise: {
    /** One per airborne source: outside level, level inside, and which path brings how much. */
    readonly bySource: readonly {
      readonly name: string;
      readonly range: TextRange;
      readonly outside: LevelTotals;
      readonly inside: LevelTotals;
      /** Share 0..1 of the energy inside, [path][band]; same order as `paths`; null where not assessed. */
      readonly shares: readonly ByBand[];
      readonly differenceDbA: Ranged | null;
      /** Whether it sounds in the hours that the total is for. */
      readonly inTotal: boolean;
    }[];
    /** At the setting of the session; null when the fans stand still or state no sound power. */
    readonly fan: LevelTotals | null;
    readonly fanParts: readonly FanPart[];
    readonly airInDucts: LevelTotals | null;
    readonly airAtOpenings: LevelTotals | null;
    readonly airParts: readonly AirPart[];
    readonly equipment: readonly EquipmentNoise[];
    /** Of the loudest hours, at the setting of the session. */
    readonly total: LevelTotals;
    /** The same at every setting of the fans. */
    readonly bySetting: readonly NoiseAtFanSetting[];
    readonly notPredicted: readonly {
      readonly kind: 'structure' | 'vibration' | 'unknown-power';
      readonly name: string;
      readonly range: TextRange;
      readonly why: string;
    }[];
    readonly roomTone: RoomTone | null;
    /** Null when no source has hours. */
    readonly hours: HoursResult | null;
    readonly mounts: MountsResult | null;
  };
  readonly lowBands: LowBands;
  /** The room around the booth first, then every neighbour. */
  readonly voiceAt: readonly VoiceAt[];
  readonly voiceOutside:
    | (LevelTotals & { readonly effort: string; readonly where: string; readonly note: string })
    | null;
  readonly reverberation: {
    readonly absorptionAreaM2: readonly number[];
    readonly sabineS: ByBand;
    readonly eyringS: ByBand;
    /** Below this frequency neither holds. Bands are null there, above a mean absorption of 0.5, and with an open face. */
    readonly validFromHz: number;
  };
  /** Decay by band, and modes; null with an open face. */
  readonly roomSound: RoomSoundResult | null;
  readonly ventilation: VentilationResult;
  readonly air: AirResult | null;
  readonly build: {
    readonly massKg: number;
    readonly massByPart: readonly { readonly part: string; readonly kg: number }[];
    readonly loadedMassKg: number;
    readonly floorLoadPa: number;
    readonly footprintM2: number;
    readonly cost: {
      readonly amount: number;
      readonly currency: string;
      readonly withReserve: number;
      /** What the list buys too few of, at its own prices and without the reserve. */
      readonly missing: number;
      /** What the parts need in a size that no item of its material is for: it has no price and is in no sum. */
      readonly unpriced: readonly string[];
    } | null;
    /** The faces as panels; empty when the text does not cut them, and `panelsWhy` says so. */
    readonly panels: readonly PanelResult[];
    readonly panelsWhy: string | null;
    /** What had to be assumed for them, in sentences. */
    readonly panelNotes: readonly string[];
    /** Number of the heaviest panel; null without panels. */
    readonly heaviestPanel: number | null;
    /** The cut list. */
    readonly parts: readonly PartResult[];
    readonly sheetLayouts: readonly SheetLayout[];
    readonly lengthLayouts: readonly LengthLayout[];
    readonly fittings: readonly FittingResult[];
    readonly shopping: ShoppingResult;
    readonly sealing: SealingResult;
    readonly structure: StructureResult;
  };
  /** Null where the text has neither a room nor a way in nor panels. */
  readonly moving: MovingResult | null;
  /** Null where it can't be told, and `reflectionsWhy` says why. */
  readonly reflections: ReflectionsResult | null;
  readonly reflectionsWhy: string | null;
}

export interface RequirementResult {
  readonly text: string;
  readonly kind: string;
  readonly booth: string | null;
  readonly range: TextRange;
  readonly verdict: Verdict;
  readonly value: Ranged | null;
  /** True where the value is a lower bound, as something that belongs to it is not known; left out otherwise. */
  readonly atLeast?: true;
  readonly limit: number;
  readonly unit: string;
  /** Positive when met. */
  readonly margin: number | null;
  /** True when the limit lies within the range of the prediction. */
  readonly withinRange: boolean;
  readonly limitedBy: string | null;
  readonly explanation: string;
}

/**
 * A change of the text, part of a fix: `value` puts `text` at `range`; `remove` takes the lines of `range` away; `fact`
 * adds the line `text` to the block whose first line is `range`; `move` puts what stands at `from` at `range`.
 */
export interface FixEdit {
  readonly kind: 'value' | 'remove' | 'fact' | 'move';
  readonly range: TextRange;
  readonly text: string;
  readonly from: TextRange | null;
}

export interface Finding {
  readonly id: string;
  readonly severity: 'error' | 'warning' | 'information';
  readonly range: TextRange;
  /** Carries its number. */
  readonly message: string;
  readonly explanation: string;
  readonly source: string;
  readonly fix: string;
  readonly figures: Readonly<Record<string, number>>;
  readonly related: readonly { readonly range: TextRange; readonly message: string }[];
  /** The text of the fix; empty where it is told in words only. */
  readonly edits?: readonly FixEdit[];
}

export interface Caution {
  readonly id: string;
  /** `note` is a hazard that any booth of the kind has. */
  readonly severity: 'stop' | 'caution' | 'note';
  readonly range: TextRange;
  readonly hazard: string;
  readonly number: string | null;
  readonly why: string;
  readonly ask: string;
}

export interface DefaultUsed {
  readonly name: string;
  readonly value: string;
  readonly evidence: string;
  readonly source: string;
  readonly range: TextRange;
}

/** The same results by name, and what changed against the base. */
export interface VariantResult {
  readonly title: string | null;
  readonly assemblies: Readonly<Record<string, AssemblyResult>>;
  readonly booths: Readonly<Record<string, BoothResult>>;
  readonly requirements: readonly RequirementResult[];
  readonly findings: readonly Finding[];
  readonly cautions: readonly Caution[];
  readonly unread: readonly UnreadPart[];
  /** What the variant changes, as the text has it; of a block written anew the first line. */
  readonly written: readonly { readonly text: string; readonly range: TextRange }[];
  /** What that does to the figures. */
  readonly changes: readonly {
    readonly what: string;
    readonly base: number | null;
    readonly variant: number | null;
    readonly unit: string;
  }[];
}
