import type { Air } from '../air/air-properties.js';
import { ArgumentError } from '../errors/argument-error.js';
import { requireNumber } from '../errors/require-number.js';
import { bendingStiffness } from '../panels/bending-stiffness.js';
import { criticalFrequencyOf } from '../panels/critical-frequency.js';
import type { Plate } from '../panels/plate.js';
import type { SinglePanel } from '../panels/single-panel.js';

/** A leaf of a wall as the closed-form models see it. */
export type WallLeaf = {
  /** kg/m2 */
  readonly surfaceMass: number;
  /** Hz; infinite for a leaf without bending stiffness. */
  readonly criticalFrequency: number;
  /** Ratio of the imaginary to the real part of the bending stiffness, with what is lost at the edges. */
  readonly lossFactor: number;
};

/** The leaf made of one plate. Units and equation: `criticalFrequency`. */
export function wallLeafOf(plate: Plate, air: Air): WallLeaf {
  const surfaceMass = plate.density * plate.thickness;
  const stiffness = bendingStiffness(plate);
  return {
    surfaceMass,
    criticalFrequency: stiffness > 0 ? criticalFrequencyOf(surfaceMass, stiffness, air) : Number.POSITIVE_INFINITY,
    lossFactor: plate.lossFactor,
  };
}

/**
 * The same leaf with its bending stiffness in N m in place of its critical frequency.
 *
 * Equation: B = m (c^2/(2 pi fc))^2.
 */
export function singlePanelOfLeaf(leaf: WallLeaf, air: Air): SinglePanel {
  const { surfaceMass, criticalFrequency, lossFactor } = leaf;
  const stiffness = surfaceMass * (air.soundSpeed ** 2 / (2 * Math.PI * criticalFrequency)) ** 2;
  return { surfaceMass, stiffness, lossFactor };
}

/**
 * Rejects a leaf that cannot exist.
 * Errors: ArgumentError that names the property and the leaf by its place.
 */
export function checkWallLeaf(leaf: WallLeaf, place: string): void {
  requireNumber(`surface mass of ${place}`, leaf.surfaceMass, { above: 0, unit: 'kg/m2' });
  requireNumber(`loss factor of ${place}`, leaf.lossFactor, { atLeast: 0, atMost: 1 });
  if (!(leaf.criticalFrequency > 0)) {
    throw new ArgumentError(
      `critical frequency of ${place}`,
      leaf.criticalFrequency,
      'a number of Hz above 0, or infinity for a leaf without stiffness',
    );
  }
}
