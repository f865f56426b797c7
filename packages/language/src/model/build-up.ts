import type { Named, Sourced, SourceRange } from './sourced.js';

export interface Size3 {
  readonly width: Sourced<number>;
  readonly depth: Sourced<number>;
  readonly height: Sourced<number>;
}
export interface Size2 {
  readonly width: Sourced<number>;
  readonly height: Sourced<number>;
}

// ---------------------------------------------------------------- materials

export type MaterialKind = 'panel' | 'limp' | 'porous' | 'cloth' | 'covering' | 'lumber';

/**
 * `panel`    stiff board: density, modulus, poisson, loss-factor
 * `limp`     sheet without stiffness: density or a surface mass
 * `porous`   fibre or open foam: flow resistivity, density
 * `cloth`    thin permeable sheet: flow resistance, surface mass
 * `covering` floor covering or mat: surface mass, absorption table
 * `lumber`   frame stock: density; of folded steel its gauge
 */
export interface Material extends Named {
  readonly kind: MaterialKind;
  /** kg/m3 */
  readonly density?: Sourced<number>;
  /** kg/m2, for materials sold by area */
  readonly surfaceMass?: Sourced<number>;
  /** m, for materials with one thickness */
  readonly thickness?: Sourced<number>;
  /** Pa */
  readonly modulus?: Sourced<number>;
  /** Pa, across the grain; as stiff in every direction when absent. */
  readonly modulusAcross?: Sourced<number>;
  /** Pa; that of an isotropic material when absent. */
  readonly shearModulus?: Sourced<number>;
  readonly poisson?: Sourced<number>;
  readonly lossFactor?: Sourced<number>;
  /** Pa.s/m2 */
  readonly resistivity?: Sourced<number>;
  /** Pa.s/m */
  readonly flowResistance?: Sourced<number>;
  readonly absorption?: Sourced<BandTable>;
  readonly price?: Sourced<Price>;
  readonly fireClass?: Sourced<string>;
  /** The sheet it is sold in: width x height. */
  readonly sheet?: Size2;
  /** m, the length it is sold in: lumber, strips, ducts */
  readonly stockLength?: Sourced<number>;
  /** The `source` line of the material, if any. */
  readonly source?: Sourced<string>;
  /** m, thickness of the sheet that a light steel stud is folded from: lumber that has one is hollow. */
  readonly gauge?: Sourced<number>;
  /** N/m2, force per metre of a stud over how far its two faces come together; rigid, or as its gauge says, when absent. */
  readonly studStiffness?: Sourced<number>;
  readonly fromCatalogue: boolean;
}

export interface Price {
  readonly amount: number;
  /** ISO 4217 */
  readonly currency: string;
  readonly per: 'm2' | 'm' | 'm3' | 'kg' | 'sheet' | 'piece' | undefined;
}

/** Values by nominal band centre. A band left out is unknown, never zero. */
export interface BandTable {
  readonly grid: 'octave' | 'third';
  readonly values: readonly {
    readonly hz: number;
    readonly value: number;
    readonly range: SourceRange;
    /** Half-width of the stated 90 % range of this band, in the unit of `value`. */
    readonly tolerance?: number;
  }[];
}

// ---------------------------------------------------------------- assemblies

/** Layers from outside to inside. */
export interface Assembly extends Named {
  readonly layers: readonly AssemblyLayer[];
}

export type AssemblyLayer = MaterialLayer | AirLayer | FrameLayer;

export interface MaterialLayer {
  readonly kind: 'material';
  readonly material: Material;
  readonly materialRange: SourceRange;
  /** m; undefined only for limp, cloth and covering materials known by surface mass alone. */
  readonly thickness: Sourced<number> | undefined;
  /** kg/m2; given on the line, or density x thickness, or the material's own. */
  readonly surfaceMass: Sourced<number>;
  readonly range: SourceRange;
}

export interface AirLayer {
  readonly kind: 'air';
  readonly thickness: Sourced<number>;
  /** What holds a board off a frame across this gap. */
  readonly fixings?: ResilientFixings;
  readonly range: SourceRange;
}

/** Channels or clips between a frame and a board: springs where they meet the studs. */
export interface ResilientFixings {
  readonly kind: 'channels' | 'clips';
  /** m along a stud, centre to centre */
  readonly spacing: Sourced<number>;
  /** N/m of one, where it meets one stud */
  readonly stiffness: Sourced<number>;
}

/** Studs between two leaves; `fill` stands in the cavity, the rest of the depth is air. */
export interface FrameLayer {
  readonly kind: 'frame';
  /** m, along the wall */
  readonly width: Sourced<number>;
  /** m, across the wall: the cavity depth */
  readonly depth: Sourced<number>;
  /** m, centre to centre */
  readonly spacing: Sourced<number>;
  /** Of hollow studs the density is that of a solid of the same outline and weight. */
  readonly lumber: Material;
  /** m along a stud; only where the studs are of folded sheet. */
  readonly screws?: Sourced<number>;
  readonly fill: MaterialLayer | undefined;
  readonly range: SourceRange;
}
