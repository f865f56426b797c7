import type { Plate } from './plate.js';

/** `bendingStiffness` of a plate that is known to be right, N m: it is asked for at every frequency. */
export function stiffnessOfPlate({ youngsModulus, thickness, poissonRatio }: Plate): number {
  return (youngsModulus * thickness ** 3) / (12 * (1 - poissonRatio ** 2));
}
