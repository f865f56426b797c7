import type { TextRange } from './result-values.js';

/** `upright` stands on its short edge, `on-its-side` on its long edge; the last three are held at `angleDeg` out of upright. */
export type PanelPose = 'upright' | 'on-its-side' | 'flat' | 'tilted' | 'leaning' | 'leaning-on-its-side';

/** `tight` goes on paper, with less to spare than hands and a tape measure need. */
export type Passes = 'goes' | 'tight' | 'does-not-go';

/** One panel through one place on its way. */
export interface PanelWay {
  readonly way: string;
  readonly passes: Passes;
  /** The way to hold it; of a panel that does not go, the one that misses by least. */
  readonly pose: PanelPose;
  readonly angleDeg: number;
  /** True where it stands across the corners of a lift car. */
  readonly diagonal: boolean;
  /** m left in the tightest direction; negative by how much it is too large. */
  readonly leftM: number;
  /** m of straight floor that the panel takes up along the way when held so. */
  readonly lengthM: number;
  /** m; how long a panel of this width and thickness could be at most; null where this one goes or none would. */
  readonly longestM: number | null;
  readonly text: string;
}

/** Standing a wall panel up from lying on its face, about its bottom edge. */
export interface PanelRaised {
  /** m; sqrt(height^2 + thickness^2) */
  readonly diagonalM: number;
  /** m under the ceiling of the room, standing on the floor of the room */
  readonly leftOnRoomFloorM: number;
  /** m under the ceiling when raised where it stands in the booth */
  readonly leftInPlaceM: number;
  readonly passes: Passes;
  readonly text: string;
}

/** What helpers hold in their hands on moving day. */
export interface MovingCard {
  /** Number of the panel; null for the leaf of a door. */
  readonly panel: number | null;
  /** `front 2`, `leaf of door entry` */
  readonly name: string;
  readonly face: string;
  readonly widthM: number;
  readonly heightM: number;
  readonly thicknessM: number;
  readonly massKg: number;
  /** False where a material has no density, so that the panel weighs more than this. */
  readonly massKnown: boolean;
  /** By common practice, from mass and size. */
  readonly people: number;
  /** True for what is held overhead. */
  readonly props: boolean;
  readonly ways: readonly PanelWay[];
  /** Null for roof and floor, and without the height of the room. */
  readonly raised: PanelRaised | null;
}

export interface SideGap {
  readonly side: 'front' | 'back' | 'left' | 'right';
  /** m to the wall of the room; negative where the booth is through it. */
  readonly toWallM: number;
  /** m to the wall, or to an obstacle before it. */
  readonly freeM: number;
  /** What stands before the wall; null for nothing. */
  readonly obstacle: string | null;
  /** True where somebody can work between booth and wall, by common practice. */
  readonly reachable: boolean;
}

export interface ObstacleFit {
  readonly name: string;
  readonly range: TextRange;
  readonly collides: boolean;
  /** m in plan to the booth; zero where they overlap. */
  readonly gapM: number;
  /** m of its underside above the top of the booth, where they overlap in plan; negative where it is lower. */
  readonly aboveM: number | null;
  /** How to clear it; null where nothing is in the way, or where no move in the room would. */
  readonly move: { readonly towards: SideGap['side']; readonly byM: number; readonly offWallM: number } | null;
  readonly text: string;
}

export interface RoofFit {
  /** As said in the text; null when nothing is said. */
  readonly said: 'lift' | 'slide' | null;
  readonly thicknessM: number;
  readonly wallTopM: number;
  /** m, lowest thing above the booth: ceiling or obstacle */
  readonly ceilingM: number;
  readonly ceilingIs: string;
  /** m between the top of the booth and that. */
  readonly aboveBoothM: number;
  /** m between the top of the walls and that. */
  readonly overWallsM: number;
  readonly lift: { readonly needsM: number; readonly passes: Passes };
  readonly slide: {
    /** m over the walls: thickness of the roof and a little play */
    readonly needsM: number;
    readonly passes: Passes;
    /** From which sides there is floor to start from, level; null when the place of the booth is not known. */
    readonly from:
      | readonly { readonly side: SideGap['side']; readonly freeM: number; readonly needsM: number }[]
      | null;
    readonly sides: readonly SideGap['side'][] | null;
  };
  readonly text: string;
}

export interface DoorSwing {
  readonly door: string;
  readonly range: TextRange;
  readonly swing: 'outward' | 'inward';
  readonly leafM: number;
  /** m of free floor before the leaf; null when the place of the booth is not known. */
  readonly freeM: number | null;
  readonly before: string | null;
  /** degrees to which it opens at most; null when not known */
  readonly opensDeg: number | null;
  readonly text: string;
}

export interface AssemblyStep {
  readonly step: number;
  readonly what: string;
  readonly panels: readonly number[];
  readonly fastenedFrom: 'inside' | 'outside' | null;
  readonly why: string;
}

export interface AssemblyOrder {
  readonly possible: boolean;
  /** Empty where no order exists. */
  readonly steps: readonly AssemblyStep[];
  /** What stands in the way of any order. */
  readonly blockedBy: readonly string[];
  /** What is taken for granted because the text does not say it. */
  readonly assumes: readonly string[];
}

export interface MovingProblem {
  readonly id:
    | 'panel-does-not-go-through'
    | 'panel-cannot-be-stood-up'
    | 'roof-cannot-go-on'
    | 'booth-too-high'
    | 'booth-outside-the-room'
    | 'booth-hits-obstacle'
    | 'door-cannot-open'
    | 'no-order';
  /** What it is about: a way, a face, an obstacle, a door. With `id` it names the problem in base and variants. */
  readonly subject: string;
  readonly text: string;
  readonly fix: string;
  readonly range: TextRange;
}

/** Getting the booth in, up and out again. */
export interface MovingResult {
  readonly ways: readonly {
    readonly name: string;
    readonly kind: 'doorway' | 'lift' | 'passage';
    readonly range: TextRange;
  }[];
  readonly cards: readonly MovingCard[];
  /** Null without the height of the room. */
  readonly roof: RoofFit | null;
  /** Null without room or place. */
  readonly sides: readonly SideGap[] | null;
  readonly obstacles: readonly ObstacleFit[];
  readonly doors: readonly DoorSwing[];
  /** Null for a booth that the text does not cut into panels. */
  readonly assembly: AssemblyOrder | null;
  readonly problems: readonly MovingProblem[];
  /** What the text would have to say for an answer that is missing. */
  readonly asks: readonly string[];
  readonly leavesOut: readonly string[];
}
