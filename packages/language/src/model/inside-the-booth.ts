import type { BandTable, Size3 } from './build-up.js';
import type { Named, Sourced, SourceRange } from './sourced.js';

/** m in the axes of the booth: from the left wall, from the front wall, above the floor, between structural faces. */
export interface Place {
  readonly range: SourceRange;
  readonly x: Sourced<number>;
  readonly y: Sourced<number>;
  readonly z: Sourced<number>;
}

export type EquipmentKind = 'screen' | 'copy-stand' | 'desk' | 'shelf' | 'lamp' | 'computer' | 'loudspeaker' | 'other';

/** Something that stands or hangs in the booth: it reflects, weighs, warms or hums. */
export interface Equipment extends Named {
  readonly kind: Sourced<EquipmentKind>;
  /** Its middle. */
  readonly position: Place;
  /** Width x depth x height; undefined for something too small to reflect. */
  readonly size: Size3 | undefined;
  /** degrees by which its top leans back, away from the front wall; zero is upright */
  readonly tilt: Sourced<number>;
  readonly mount: Sourced<'stands' | 'hangs'> | undefined;
  /** kg */
  readonly mass: Sourced<number> | undefined;
  /** W, counted besides the `heat` of the session */
  readonly heat: Sourced<number> | undefined;
  /** dB re 1 pW */
  readonly soundPower: Sourced<BandTable> | undefined;
  /** 0..1, of its faces, at the bands of speech */
  readonly absorption: Sourced<number>;
}

/** How the faces are cut into panels, and how they are put up. */
export interface Panels {
  readonly range: SourceRange;
  /** m, widest panel */
  readonly width: Sourced<number>;
  /** m above the bottom of the walls, of a horizontal joint; undefined for panels of full height */
  readonly split: Sourced<number> | undefined;
  readonly fastened: Sourced<'outside' | 'inside'> | undefined;
  readonly roof: Sourced<'lift' | 'slide'> | undefined;
}

/** Springs under the booth. */
export interface Mounts {
  readonly range: SourceRange;
  readonly count: Sourced<number>;
  /** N/m of each */
  readonly stiffness: Sourced<number>;
}
