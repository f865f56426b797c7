import type { Assembly, BandTable, Size3 } from './build-up.js';
import type { Named, Sourced } from './sourced.js';

/** s after midnight; a span that ends before it starts goes over midnight. */
export interface HourSpan {
  readonly from: number;
  readonly to: number;
}

/** A stretch of the way that every panel must take: a stair, a landing, a corridor. */
export interface Passage extends Named {
  /** m, clear */
  readonly width: Sourced<number>;
  /** m, least clear height; undefined when nothing is said */
  readonly headroom: Sourced<number> | undefined;
  readonly turn: Sourced<'none' | 'quarter' | 'half'>;
  /** m, clear width after the turn */
  readonly onto: Sourced<number> | undefined;
}

/** A pipe, a radiator, a chimney breast: a box in the axes of the room. */
export interface Obstacle extends Named {
  /** m, its left front lower corner */
  readonly position: { readonly x: Sourced<number>; readonly y: Sourced<number>; readonly z: Sourced<number> };
  readonly size: Size3;
}

/** Where the voice must not be heard: a room behind a wall or floor, or a place outdoors. */
export interface Neighbour extends Named {
  readonly side: Sourced<'above' | 'below' | 'beside' | 'outdoors'>;
  /** What separates it from the room around the booth: a build-up, or its transmission loss. */
  readonly separation:
    | { readonly kind: 'assembly'; readonly assembly: Assembly }
    | { readonly kind: 'loss'; readonly loss: Sourced<BandTable> }
    | undefined;
  /** m2 of the separating element */
  readonly area: Sourced<number> | undefined;
  /** m3 of the room behind it */
  readonly volume: Sourced<number> | undefined;
  /** s of the room behind it */
  readonly reverberation: Sourced<number>;
  /** m from the outer wall, outdoors */
  readonly distance: Sourced<number> | undefined;
}
