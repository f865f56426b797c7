import type { BoxInBooth } from '@boothwright/assessment';
import type { Vector } from './project.js';

const touch = 1e-6;

/**
 * Boxes from the farthest to the nearest, so that each may be drawn over those before it. Of two boxes that a plane apart
 * the one on the side of the eye is nearer; boxes that nothing orders go by their middles.
 */
export function farToNear(boxes: readonly BoxInBooth[], towards: Vector): number[] {
  const spans = boxes.map(({ xM, yM, zM, widthM, depthM, heightM }) => [
    [xM, xM + widthM] as const,
    [yM, yM + depthM] as const,
    [zM, zM + heightM] as const,
  ]);
  const middle = spans.map((axes) =>
    axes.reduce((sum, [from, to], axis) => sum + ((from + to) / 2) * towards[axis]!, 0),
  );
  /** True where `one` must be drawn before `other`. */
  const behind = (one: number, other: number): boolean => {
    let votes = 0;
    for (let axis = 0; axis < 3; axis += 1) {
      const [a, b] = [spans[one]![axis]!, spans[other]![axis]!];
      if (Math.abs(towards[axis]!) < touch) continue;
      const near = towards[axis]! > 0 ? 1 : -1;
      if (a[1] <= b[0] + touch) votes |= near > 0 ? 1 : 2;
      else if (b[1] <= a[0] + touch) votes |= near > 0 ? 2 : 1;
    }
    return votes === 1 || (votes === 3 && middle[one]! < middle[other]!);
  };
  const left = new Set(boxes.keys());
  const order: number[] = [];
  while (left.size > 0) {
    const free = [...left].filter((one) => ![...left].some((other) => other !== one && behind(other, one)));
    const candidates = free.length > 0 ? free : [...left];
    const next = candidates.reduce((best, one) => (middle[one]! < middle[best]! ? one : best));
    left.delete(next);
    order.push(next);
  }
  return order;
}
