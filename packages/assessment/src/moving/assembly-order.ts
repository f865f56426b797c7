import { decimals } from '../text/decimals.js';
import { joined } from '../text/joined.js';
import type { Side } from './place.js';

/** What decides in which order walls can be put up. */
export interface WallsToPutUp {
  /** Walls that are built, each with how many panels stand beside each other in it. */
  readonly walls: readonly { readonly side: Side; readonly columns: number }[];
  /** Sides at which somebody can work from outside; a side without a built wall is one too if people can stand there. */
  readonly reachable: ReadonlySet<Side>;
  /** m between booth and room at sides out of reach, for sentences */
  readonly free: ReadonlyMap<Side, number>;
  /** Undefined: each wall is fastened from where it can be. */
  readonly fastened: 'inside' | 'outside' | undefined;
  /** Sides with a door in them. */
  readonly doors: ReadonlySet<Side>;
}

export interface PutUp {
  readonly side: Side;
  readonly from: 'inside' | 'outside';
  /** How the panels get to their place. */
  readonly brought: 'from outside' | 'across the floor';
  /** True for a wall out of reach that is held by latches on its neighbours only. */
  readonly heldAtCorners: boolean;
}

export type OrderFound =
  | { readonly possible: true; readonly order: readonly PutUp[] }
  | { readonly possible: false; readonly blockedBy: readonly string[] };

/**
 * The order in which walls can be put up, by trying all of them (24 at most) under these rules:
 *
 * - Each wall after the first meets one that stands already, so that a corner holds both.
 * - A wall comes to its place from outside where somebody can stand there, else across the floor of the booth, through a
 *   side that is still open and can be walked to.
 * - From inside, it is fastened by somebody who can still get out: by an open side or by the door.
 * - From outside, it is fastened where somebody can stand before it; a wall of one panel out of reach can be held at its
 *   corners, by latches on both neighbours, if those can be reached.
 *
 * Of those that work, the one that does the walls out of reach first and the wall with the door last.
 */
export function assemblyOrder(input: WallsToPutUp): OrderFound {
  const all = input.walls.map(({ side }) => side);
  const works = permutations(all)
    .map((order) => putUp(order, input))
    .filter((order): order is PutUp[] => order !== undefined);
  if (works.length === 0) return { possible: false, blockedBy: reasons(input) };
  const order = works.reduce((best, other) => (cost(other, input) < cost(best, input) ? other : best));
  return { possible: true, order };
}

/** Each wall's way up in this order; undefined where one of the rules forbids it. */
function putUp(order: readonly Side[], input: WallsToPutUp): PutUp[] | undefined {
  const steps: PutUp[] = [];
  for (const [index, side] of order.entries()) {
    const standing = order.slice(0, index);
    const later = order.slice(index + 1);
    if (index > 0 && !standing.some((other) => other !== across(side))) return undefined;
    const open = openings(input, later);
    const brought = input.reachable.has(side) ? 'from outside' : open.length > 0 ? 'across the floor' : undefined;
    if (brought === undefined) return undefined;
    const fastening = fasteningOf(side, open.length > 0 || exitByDoor(input), input);
    if (fastening === undefined) return undefined;
    steps.push({ side, brought, ...fastening });
  }
  return steps;
}

function fasteningOf(
  side: Side,
  exit: boolean,
  input: WallsToPutUp,
): Pick<PutUp, 'from' | 'heldAtCorners'> | undefined {
  const { fastened, reachable } = input;
  if (fastened !== 'outside' && exit) return { from: 'inside', heldAtCorners: false };
  if (fastened === 'inside') return undefined;
  if (reachable.has(side)) return { from: 'outside', heldAtCorners: false };
  return cornersHold(side, input) ? { from: 'outside', heldAtCorners: true } : undefined;
}

/** A wall of one panel has no joint of its own but the corners; their latches can sit on the neighbours. */
function cornersHold(side: Side, { walls, reachable }: WallsToPutUp): boolean {
  const columns = walls.find((wall) => wall.side === side)?.columns ?? 0;
  return columns === 1 && neighbours(side).every((other) => reachable.has(other));
}

/** Sides without a wall yet, or without one at all, through which people come and go. */
function openings({ walls, reachable }: WallsToPutUp, later: readonly Side[]): Side[] {
  const built = new Set(walls.map(({ side }) => side));
  return [...reachable].filter((side) => later.includes(side) || !built.has(side));
}

function exitByDoor({ doors, reachable }: WallsToPutUp): boolean {
  return [...doors].some((side) => reachable.has(side));
}

/** Smaller is better: doors late first of all, then walls out of reach early, then the usual round. */
function cost(order: readonly PutUp[], { doors, reachable }: WallsToPutUp): number {
  return order.reduce((sum, { side }, index) => {
    const last = order.length - 1 - index;
    const usual = usualRound.indexOf(side) * (order.length - index) * 0.01;
    return sum + (doors.has(side) ? last * 100 : 0) + (reachable.has(side) ? 0 : index * 10) + usual;
  }, 0);
}

const usualRound: readonly Side[] = ['back', 'left', 'right', 'front'];

function reasons(input: WallsToPutUp): string[] {
  const { walls, reachable, free, fastened, doors } = input;
  if (reachable.size === 0) {
    return ['no side of the booth has room to stand at: people cannot bring the panels in'];
  }
  const gap = (side: Side) => `${decimals(Math.max(0, free.get(side) ?? 0) * 1000, 0)} mm`;
  if (fastened === 'outside') {
    const out = walls.filter(({ side }) => !reachable.has(side) && !cornersHold(side, input));
    if (out.length > 0) {
      const which = joined(out.map(({ side }) => `${side} (${gap(side)} to the room)`));
      return [`fastened from outside, but nobody can reach the outside of ${which}`];
    }
  }
  if (doors.size > 0 && !exitByDoor(input)) {
    return [
      `fastened from inside, but who closes the last wall cannot get out: the door is on the ${joined([...doors])} with ${joined([...doors].map(gap))} before it`,
    ];
  }
  if (doors.size === 0) return ['fastened from inside, but there is no door to leave by'];
  return ['the walls that can be reached from outside do not let the others be brought in and fastened'];
}

function permutations<T>(items: readonly T[]): T[][] {
  if (items.length <= 1) return [[...items]];
  return items.flatMap((item, index) =>
    permutations([...items.slice(0, index), ...items.slice(index + 1)]).map((rest) => [item, ...rest]),
  );
}

function across(side: Side): Side {
  return ({ front: 'back', back: 'front', left: 'right', right: 'left' } as const)[side];
}

function neighbours(side: Side): Side[] {
  return side === 'front' || side === 'back' ? ['left', 'right'] : ['front', 'back'];
}
