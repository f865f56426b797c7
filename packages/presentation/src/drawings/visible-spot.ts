export type Point = readonly [number, number];

/** Corners of the smallest convex outline around the points, counter-clockwise. */
export function outline(points: readonly Point[]): Point[] {
  const sorted = [...points].sort((a, b) => a[0] - b[0] || a[1] - b[1]);
  const half = (all: readonly Point[]) => {
    const hull: Point[] = [];
    for (const point of all) {
      while (hull.length >= 2 && cross(hull[hull.length - 2]!, hull[hull.length - 1]!, point) <= 0) hull.pop();
      hull.push(point);
    }
    return hull.slice(0, -1);
  };
  return [...half(sorted), ...half(sorted.reverse())];
}

function cross(a: Point, b: Point, c: Point): number {
  return (b[0] - a[0]) * (c[1] - a[1]) - (b[1] - a[1]) * (c[0] - a[0]);
}

export function within(point: Point, corners: readonly Point[]): boolean {
  return corners.every((corner, index) => cross(corner, corners[(index + 1) % corners.length]!, point) >= 0);
}

const steps = 9;

/** A spot of the side with these four corners, near its middle, that none of `before` covers; undefined where all is hidden. */
export function visibleSpot(
  corners: readonly [Point, Point, Point, Point],
  before: readonly (readonly Point[])[],
  margin: number,
): Point | undefined {
  const [a, b, , d] = corners;
  let best: Point | undefined;
  let bestScore = Number.POSITIVE_INFINITY;
  for (let i = 1; i < steps; i += 1) {
    for (let j = 1; j < steps; j += 1) {
      const [u, v] = [i / steps, j / steps];
      const spot: Point = [a[0] + (b[0] - a[0]) * u + (d[0] - a[0]) * v, a[1] + (b[1] - a[1]) * u + (d[1] - a[1]) * v];
      const covered = (x: number, y: number) => before.some((corner) => within([x, y], corner));
      if (covered(...spot)) continue;
      // A number that is cut off by what stands before it is worse than one away from the middle.
      const cut = [0, 1, 2, 3, 4, 5].filter((turn) => {
        const angle = (turn * Math.PI) / 3;
        return covered(spot[0] + margin * Math.cos(angle), spot[1] + margin * Math.sin(angle));
      }).length;
      const score = cut + Math.hypot(u - 0.5, v - 0.5);
      if (score < bestScore) [best, bestScore] = [spot, score];
    }
  }
  return best;
}
