import { angledPoses, type PanelSize, type Pose, squarePoses } from './poses.js';

/** m left, and how a pose stands in plan. */
export interface PoseFit {
  readonly pose: Pose;
  /** m; the least of what is left in any direction, negative where it does not go */
  readonly play: number;
  /** True where it stands across the corners of a car in plan. */
  readonly diagonal: boolean;
}

/** What is left for a pose, m. */
export type Judge = (pose: Pose) => { readonly play: number; readonly diagonal?: boolean };

/** Rounding of sums of lengths, m. */
const rounding = 1e-9;
const steps = 45;
const refinements = 18;

/**
 * The first square pose with `comfort` to spare, in the order in which people would try; else the pose of all with the most
 * to spare, those at an angle among them. Angles are looked at every two degrees, then narrowed down around the best: a
 * bounded search that gives the same answer every time.
 */
export function bestPose(size: PanelSize, judge: Judge, comfort: number): PoseFit {
  const square = squarePoses(size).map((pose) => fitOf(pose, judge));
  const easy = square.find(({ play }) => play >= comfort);
  if (easy !== undefined) return easy;
  const passable = square.find(({ play }) => play >= -rounding);
  const angled = angledPoses.map((family) => bestAngle((angle) => fitOf(family(size, angle), judge)));
  const comfortable = angled.find(({ play }) => play >= comfort);
  if (comfortable !== undefined) return comfortable;
  // A pose at an angle must be worth the trouble: with no more to spare than a square one it is not told.
  return [...square, ...angled].reduce(
    (best, fit) => (fit.play > best.play + rounding ? fit : best),
    passable ?? (square[0] as PoseFit),
  );
}

function fitOf(pose: Pose, judge: Judge): PoseFit {
  const { play, diagonal = false } = judge(pose);
  return { pose, play: Math.abs(play) < rounding ? 0 : play, diagonal };
}

function bestAngle(at: (angle: number) => PoseFit): PoseFit {
  const width = Math.PI / 2 / steps;
  let best = at(0);
  let middle = 0;
  for (let index = 1; index <= steps; index += 1) {
    const fit = at(index * width);
    if (fit.play > best.play) {
      best = fit;
      middle = index * width;
    }
  }
  let reach = width / 2;
  for (let index = 0; index < refinements; index += 1) {
    for (const angle of [middle - reach, middle + reach]) {
      if (angle < 0 || angle > Math.PI / 2) continue;
      const fit = at(angle);
      if (fit.play > best.play) {
        best = fit;
        middle = angle;
      }
    }
    reach /= 2;
  }
  return best;
}
