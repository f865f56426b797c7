import type { PanelPose } from '../result/moving-result.js';

/** m; width and height as they stand in the wall (width and depth in a roof or floor), and thickness. */
export interface PanelSize {
  readonly width: number;
  readonly height: number;
  readonly thickness: number;
}

/** A way to hold a panel: its shadow on the floor is always a rectangle, so that plan and height can be judged apart. */
export interface Pose {
  readonly kind: PanelPose;
  /** degrees out of the upright position */
  readonly angle: number;
  /** m, sides of the shadow */
  readonly long: number;
  readonly broad: number;
  /** m */
  readonly tall: number;
}

const pose = (kind: PanelPose, angle: number, long: number, broad: number, tall: number): Pose => ({
  kind,
  angle,
  long,
  broad,
  tall,
});

/** Held square: upright, on its long side, flat. In the order in which people would try. */
export function squarePoses({ width, height, thickness }: PanelSize): Pose[] {
  const long = Math.max(width, height);
  const short = Math.min(width, height);
  return [
    pose('upright', 0, short, thickness, long),
    pose('on-its-side', 90, long, thickness, short),
    pose('flat', 90, long, short, thickness),
  ];
}

/**
 * Held at an angle x, rad, in one of three ways, each with a rectangle for its shadow:
 * leaning over on its short edge; leaning over on its long edge; tilted in its own upright plane. In the order in which
 * people would try.
 * Both turned and leant at once is not among them.
 */
export const angledPoses: readonly ((size: PanelSize, angle: number) => Pose)[] = [
  ({ width, height, thickness }, angle) =>
    leant('leaning', Math.max(width, height), Math.min(width, height), thickness, angle),
  ({ width, height, thickness }, angle) =>
    leant('leaning-on-its-side', Math.min(width, height), Math.max(width, height), thickness, angle),
  ({ width, height, thickness }, angle) => {
    const long = Math.max(width, height);
    const short = Math.min(width, height);
    const sin = Math.sin(angle);
    const cos = Math.cos(angle);
    return pose('tilted', degrees(angle), short * cos + long * sin, thickness, long * cos + short * sin);
  },
];

function leant(kind: PanelPose, rises: number, lies: number, thickness: number, angle: number): Pose {
  const sin = Math.sin(angle);
  const cos = Math.cos(angle);
  return pose(kind, degrees(angle), lies, rises * sin + thickness * cos, rises * cos + thickness * sin);
}

function degrees(angle: number): number {
  return (angle * 180) / Math.PI;
}
