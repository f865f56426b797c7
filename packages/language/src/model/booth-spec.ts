import type { FittingWord } from '../vocabulary/fitting-words.js';
import type { Allowance } from './allowance.js';
import type { Assembly, AssemblyLayer, BandTable, Material, MaterialLayer, Price, Size2, Size3 } from './build-up.js';
import type { Equipment, Mounts, Panels, Place } from './inside-the-booth.js';
import type { Level } from './level.js';
import type { Measured } from './measured.js';
import type { Named, Sourced, SourceRange } from './sourced.js';
import type { HourSpan, Neighbour, Obstacle, Passage } from './surroundings.js';
import type { Chamber, Fan, Grille, Maze } from './vent-parts.js';

export type * from './build-up.js';
export type * from './level.js';

/**
 * The checked description of a booth: plain, immutable, SI units throughout
 * (m, kg, s, Pa, K differences, W, ppm; temperatures in degrees Celsius; levels in dB).
 * It knows names, units and places in the text; it knows no acoustics.
 */
export interface BoothSpec {
  readonly file: string;
  readonly materials: ReadonlyMap<string, Material>;
  readonly assemblies: ReadonlyMap<string, Assembly>;
  /** Undefined when the text has no `site` block. */
  readonly site: Site | undefined;
  readonly booths: readonly Booth[];
  readonly session: Session | undefined;
  readonly budget: Budget | undefined;
  readonly requirements: readonly Requirement[];
  readonly variants: readonly Variant[];
  /** Parts of the text that could not be read: what depends on them must not be judged. */
  readonly unread: readonly Unread[];
  /** Comments that allow what is told beyond the text itself: findings and cautions. */
  readonly allowances?: readonly Allowance[];
  /** What was measured after the build. */
  readonly measured?: readonly Measured[];
}

/** An error of the text, by the declaration it stands in. */
export interface Unread {
  /** `outside` stands for a line outside every declaration. */
  readonly part:
    | 'use'
    | 'let'
    | 'material'
    | 'assembly'
    | 'site'
    | 'booth'
    | 'session'
    | 'budget'
    | 'require'
    | 'outside';
  /** The name of the declaration, where it has one. */
  readonly name: string | undefined;
  /** The keywords of the lines inside it that hold the error, such as `door`, `swing`, as far as nothing else can have been lost. */
  readonly within: readonly string[];
  readonly message: string;
  readonly range: SourceRange;
}

/** The base spec with one variant's changes applied; evaluated beside the base, never instead of it. */
export interface Variant extends Named {
  readonly spec: BoothSpec;
  /** Its changes as the text has them, single-spaced; of a block written anew the first line. */
  readonly written: readonly { readonly text: string; readonly range: SourceRange }[];
}

// ---------------------------------------------------------------- site

export interface Site {
  readonly title: string | undefined;
  readonly range: SourceRange;
  readonly room: Size3 | undefined;
  /** s, reverberation of the room around the booth */
  readonly reverberation: Sourced<number>;
  readonly doorway: Size2 | undefined;
  readonly lift: Size3 | undefined;
  readonly floor:
    | { readonly kind: Sourced<'timber' | 'concrete' | 'unknown'>; readonly limit: Sourced<number> | undefined }
    | undefined;
  /** Which way the joists run, in the axes of the room. */
  readonly joists: Sourced<'width' | 'depth'> | undefined;
  /** degrees Celsius */
  readonly temperature: Sourced<number>;
  /** 0..1 */
  readonly humidity: Sourced<number>;
  /** degrees Celsius, of the coldest surface that the air of the booth may meet; undefined when nothing is said */
  readonly coldSurface: Sourced<number> | undefined;
  /** ppm of carbon dioxide outdoors */
  readonly outdoorAir: Sourced<number>;
  /** m3/s of outdoor air that the room around the booth gets; undefined when nothing is said */
  readonly freshAir: Sourced<number> | undefined;
  /** People in the room around the booth, besides those inside. */
  readonly occupants: Sourced<number>;
  /** dBA of the smoke alarm at the outside of the booth; undefined when nothing is said */
  readonly alarm: Sourced<Level> | undefined;
  readonly sources: readonly NoiseSource[];
  readonly appliances: readonly Appliance[];
  readonly passages: readonly Passage[];
  readonly obstacles: readonly Obstacle[];
  readonly neighbours: readonly Neighbour[];
}

export interface Appliance extends Named {
  readonly flue: Sourced<'open-flued' | 'room-sealed' | 'unknown'>;
  /** Where it burns, seen from the booth; undefined when nothing is said. */
  readonly where: Sourced<'same-room' | 'next-room' | 'elsewhere'> | undefined;
}

/** Airborne levels are those in the room at the booth's place, without the booth. */
export type NoiseSource =
  | (Named & { readonly kind: 'bands'; readonly levels: Sourced<BandTable>; readonly hours: Hours })
  | (Named & {
      readonly kind: 'shaped';
      readonly reading: Sourced<Level>;
      readonly shape: Sourced<string>;
      readonly hours: Hours;
    })
  /** Footfall and other structure-borne sound: named so that nobody forgets it; not predicted. */
  | (Named & { readonly kind: 'impact'; readonly hours: Hours });

/** When a noise is there; undefined means at any hour. */
export type Hours = Sourced<readonly HourSpan[]> | undefined;

// ---------------------------------------------------------------- booth

export type Face = 'front' | 'back' | 'left' | 'right' | 'roof' | 'floor';

/**
 * Axes: x along the width from left to right, y along the depth from front to back, z up, origin at the
 * inside front left floor corner.
 */
export interface Booth extends Named {
  /** Structural outside faces. */
  readonly outside: Size3 | undefined;
  /** Structural inside faces, before any lining. */
  readonly inside: Size3;
  /** Which assembly makes which face. */
  readonly faces: Readonly<Record<Face, { readonly assembly: Assembly; readonly range: SourceRange } | undefined>>;
  readonly linings: readonly Lining[];
  readonly doors: readonly Door[];
  readonly windows: readonly Window[];
  readonly vents: readonly Vent[];
  readonly slits: readonly Slit[];
  readonly holes: readonly Hole[];
  readonly microphone: Microphone | undefined;
  /** Where the mouth is; undefined when nothing is said. */
  readonly mouth: Place | undefined;
  /** kg of furniture and equipment that stays inside, without what has a mass of its own among `equipment` */
  readonly contents: Sourced<number>;
  readonly equipment: readonly Equipment[];
  readonly panels: Panels | undefined;
  readonly mounts: Mounts | undefined;
  /** Outside left front corner in the axes of the room; undefined when nothing is said. */
  readonly standsAt:
    | { readonly range: SourceRange; readonly x: Sourced<number>; readonly y: Sourced<number> }
    | undefined;
}

/** Layers fixed to the inside of faces, listed from the wall towards the room. */
export interface Lining {
  readonly faces: readonly Face[];
  readonly layers: readonly AssemblyLayer[];
  /** 0..1 share of the face that is covered */
  readonly cover: Sourced<number>;
  readonly range: SourceRange;
}

interface Opening extends Named {
  readonly face: Face;
  readonly faceRange: SourceRange;
}

export interface Door extends Opening {
  readonly size: Size2;
  /** m from the left edge of the face as seen from outside; undefined when not given */
  readonly offset: Sourced<number> | undefined;
  readonly leaf: Assembly;
  /** m; effective clear width of the seal gap along the sides and head */
  readonly perimeterGap: Sourced<number>;
  /** m; effective clear height of the gap at the threshold */
  readonly thresholdGap: Sourced<number>;
  readonly swing: Sourced<'outward' | 'inward'> | undefined;
  readonly lock: Sourced<'none' | 'latch' | 'lock'> | undefined;
}

export interface Window extends Opening {
  readonly size: Size2;
  readonly offset: Sourced<number> | undefined;
  /** m from the floor inside to the lower edge of the pane; undefined when not given */
  readonly sill?: Sourced<number> | undefined;
  readonly pane: Assembly;
}

export interface Vent extends Opening {
  readonly duct:
    | { readonly kind: 'rectangular'; readonly width: Sourced<number>; readonly height: Sourced<number> }
    | { readonly kind: 'round'; readonly diameter: Sourced<number> };
  /** m of straight duct */
  readonly run: Sourced<number>;
  /** m of lining and its material; undefined means bare */
  readonly lining: MaterialLayer | undefined;
  readonly bends: Sourced<number>;
  /** Measured or stated insertion loss of the whole air path; replaces the computed one. */
  readonly insertionLoss: Sourced<BandTable> | undefined;
  readonly fan: Fan | undefined;
  /** Lined boxes along the path, from the room towards the booth. */
  readonly chambers: readonly Chamber[];
  readonly maze: Maze | undefined;
  readonly grille: Grille | undefined;
  /** Where the far end opens. */
  readonly opensTo: Sourced<'room' | 'outdoors' | 'next-room' | 'appliance-room'>;
  /** The inner face of the duct. */
  readonly wall: Sourced<'smooth' | 'flexible'>;
}

export interface Slit extends Opening {
  /** m */
  readonly length: Sourced<number>;
  /** m, clear width */
  readonly gap: Sourced<number>;
  /** m, through the wall */
  readonly depth: Sourced<number>;
}

export interface Hole extends Opening {
  readonly diameter: Sourced<number>;
  readonly depth: Sourced<number>;
}

export interface Microphone {
  readonly range: SourceRange;
  readonly position: { readonly x: Sourced<number>; readonly y: Sourced<number>; readonly z: Sourced<number> };
  /** dBA */
  readonly selfNoise: Sourced<Level> | undefined;
  /** m from the mouth */
  readonly distance: Sourced<number>;
  readonly pattern: Sourced<PolarPattern>;
  /** Hz; second-order high-pass in the recording chain, undefined when none */
  readonly highPass: Sourced<number> | undefined;
}

export type PolarPattern = 'omni' | 'cardioid' | 'supercardioid' | 'hypercardioid' | 'figure-eight';

// ---------------------------------------------------------------- session, budget, requirements

export type Effort = 'casual' | 'normal' | 'raised' | 'loud' | 'shout';

export interface Session {
  readonly range: SourceRange;
  readonly people: Sourced<number>;
  /** kg each */
  readonly bodyMass: Sourced<number>;
  readonly effort: Sourced<Effort>;
  /** s */
  readonly length: Sourced<number>;
  /** W of lamps and equipment inside */
  readonly heat: Sourced<number>;
  /** ppm in the air that the vents draw */
  readonly supplyAir: Sourced<number>;
  /** m3/s per person */
  readonly co2Rate: Sourced<number>;
  /** dBFS RMS to which the voice is set */
  readonly voiceLevel: Sourced<Level>;
  /** At which setting the fans run. */
  readonly fanSpeed: Sourced<'off' | 'low' | 'high'>;
  /** s after midnight; undefined when nothing is said */
  readonly starts: Sourced<number> | undefined;
  /** A take with the door shut, and a rest with it open; undefined for one unbroken stretch. */
  readonly cycle:
    | { readonly take: Sourced<number>; readonly rest: Sourced<number>; readonly fan: Sourced<'on' | 'off'> }
    | undefined;
  /** W of dry heat and W of heat bound in moisture, of each person */
  readonly bodyHeat: Sourced<number>;
  readonly bodyMoisture: Sourced<number>;
  /** m; undefined when nothing is said */
  readonly stature: Sourced<number> | undefined;
  readonly posture: Sourced<'stands' | 'sits'>;
}

export interface Budget {
  readonly range: SourceRange;
  readonly items: readonly BudgetItem[];
  /** 0..1 */
  readonly reserve: Sourced<number>;
  /** m that the saw takes */
  readonly kerf: Sourced<number>;
}

export interface BudgetItem extends Named {
  /** What it buys, so that the list can be held against the parts; undefined when nothing is said. */
  readonly covers: { readonly material: Material; readonly thickness: Sourced<number> | undefined } | undefined;
  /** The seal or fitting it buys, of ducts perhaps those of one diameter, m. */
  readonly fitting?: { readonly word: FittingWord; readonly diameter: Sourced<number> | undefined };
  readonly quantity: Sourced<number>;
  readonly price: Sourced<Price>;
}

interface RequirementBase {
  readonly range: SourceRange;
  /** The line as written, single-spaced. */
  readonly text: string;
  /** Name of the one booth it is asked of; of every booth when absent. */
  readonly booth?: string;
}

export type Requirement = RequirementBase &
  (
    | { readonly kind: 'room-tone'; readonly limit: Sourced<Level> }
    | {
        readonly kind: 'reverberation';
        readonly min: Sourced<number> | undefined;
        readonly max: Sourced<number>;
        readonly fromHz: Sourced<number> | undefined;
        readonly toHz: Sourced<number> | undefined;
      }
    | {
        readonly kind: 'isolation';
        readonly limit: Sourced<Level>;
        readonly against: string;
        readonly againstRange: SourceRange;
      }
    | {
        readonly kind: 'voice-outside';
        readonly limit: Sourced<Level>;
        /** Name of a neighbour; undefined for the room around the booth. */
        readonly where: string | undefined;
      }
    | { readonly kind: 'temperature-rise'; readonly limit: Sourced<number> }
    | {
        /** Decay at a band over the mean of 500 Hz to 2 kHz. */
        readonly kind: 'decay-ratio';
        readonly limit: Sourced<number>;
        readonly atHz: Sourced<number>;
      }
    | {
        readonly kind: 'rating';
        readonly rating: 'stc' | 'rw';
        readonly assembly: Assembly;
        readonly limit: Sourced<number>;
      }
    | { readonly kind: 'co2'; readonly limit: Sourced<number> }
    | { readonly kind: 'mass'; readonly limit: Sourced<number> }
    | { readonly kind: 'floor-load'; readonly limit: Sourced<number> }
    | { readonly kind: 'panel-weight'; readonly limit: Sourced<number> }
    | { readonly kind: 'height'; readonly limit: Sourced<number> }
    | { readonly kind: 'cost'; readonly limit: Sourced<number>; readonly currency: string }
  );
