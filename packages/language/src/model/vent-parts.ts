import type { BandTable, MaterialLayer, Size2, Size3 } from './build-up.js';
import type { Sourced, SourceRange } from './sourced.js';

export interface Fan {
  readonly range: SourceRange;
  /** `supply` blows into the booth, `exhaust` draws out of it; undefined when nothing is said. */
  readonly direction: Sourced<'supply' | 'exhaust'> | undefined;
  /** m3/s at full speed, as installed when there is no `curve` */
  readonly flow: Sourced<number>;
  /** dB re 1 pW into the duct at full speed; unknown when not given */
  readonly soundPower: Sourced<BandTable> | undefined;
  /** Pressure against flow at full speed, by rising flow; undefined when not given. */
  readonly curve: readonly FanPoint[] | undefined;
  /** 0..1 of full speed at the setting `low` */
  readonly lowSpeed: Sourced<number>;
  /** Where it hangs; undefined when nothing is said. */
  readonly place: Sourced<'outside' | 'in-wall' | 'inside'> | undefined;
}

export interface FanPoint {
  /** m3/s */
  readonly flow: Sourced<number>;
  /** Pa */
  readonly pressure: Sourced<number>;
}

/** A lined box that the air passes, in one end and out of the other. */
export interface Chamber {
  readonly range: SourceRange;
  /** Inside, without the lining. */
  readonly size: Size3;
  /** What it is built of; undefined when nothing is said. */
  readonly board?: MaterialLayer | undefined;
  readonly lining: MaterialLayer | undefined;
}

/** A tower or box of boards that turn the air again and again. */
export interface Maze {
  readonly range: SourceRange;
  readonly turns: Sourced<number>;
  /** m of channel between two turns, along its middle */
  readonly leg: Sourced<number>;
  /** degrees of each turn */
  readonly angle: Sourced<number>;
  /** Clear width x height of the channel. */
  readonly channel: Size2;
  /** What it is built of; undefined when nothing is said. */
  readonly board?: MaterialLayer | undefined;
  readonly lining: MaterialLayer | undefined;
}

/** The face that the air passes at the end inside the booth. */
export interface Grille {
  readonly range: SourceRange;
  readonly size: Size2;
  /** 0..1 of the size that is open */
  readonly free: Sourced<number>;
}
