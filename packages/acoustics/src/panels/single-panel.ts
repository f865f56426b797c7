import { requireNumber } from '../errors/require-number.js';
import { bendingStiffness } from './bending-stiffness.js';
import { checkPlate, type Plate } from './plate.js';

/** A panel as the single-panel models see it, whatever it is built of. */
export type SinglePanel = {
  /** kg/m2 */
  readonly surfaceMass: number;
  /** Bending stiffness per unit width, N m; 0 for a limp sheet. */
  readonly stiffness: number;
  /** Ratio of the imaginary to the real part of the bending stiffness. */
  readonly lossFactor: number;
};

/**
 * The surface mass, stiffness and loss factor of a homogeneous plate.
 *
 * Equation: m = rho h, B as in `bendingStiffness`. Units: kg/m2, N m.
 * Source: thin-plate theory. Errors: ArgumentError for a plate that cannot exist.
 */
export function singlePanelOf(plate: Plate): SinglePanel {
  checkPlate(plate);
  return {
    surfaceMass: plate.density * plate.thickness,
    stiffness: bendingStiffness(plate),
    lossFactor: plate.lossFactor,
  };
}

/**
 * Rejects a panel that cannot exist.
 * Errors: ArgumentError that names the property, what was found and what was expected.
 */
export function checkSinglePanel({ surfaceMass, stiffness, lossFactor }: SinglePanel): void {
  requireNumber('surface mass of the panel', surfaceMass, { above: 0, unit: 'kg/m2' });
  requireNumber('bending stiffness of the panel', stiffness, { atLeast: 0, unit: 'newton metres' });
  requireNumber('loss factor of the panel', lossFactor, { atLeast: 0 });
}

/** Rejects a frequency that no formula can use. Errors: ArgumentError. */
export function requireFrequency(hz: number): void {
  requireNumber('frequency', hz, { above: 0, unit: 'Hz' });
}
