import type { Air } from '../air/air-properties.js';
import { requireNumber } from '../errors/require-number.js';
import { type Complex, complex, divide, multiply, scale } from '../math/complex.js';
import { bendingStiffness } from './bending-stiffness.js';
import { checkPlate, type Plate } from './plate.js';
import { requireFrequency } from './single-panel.js';

/** Share of the shear stress of a section that Mindlin's plate carries, pi^2/12 (R.D. Mindlin 1951, from memory). */
export const mindlinShearFactor = Math.PI ** 2 / 12;

/** A plate with a shear modulus of its own; that of an isotropic solid, E/(2 (1 + nu)), when absent. */
export type ThickPlate = Plate & { /** Pa */ readonly shearModulus?: number };

/**
 * Pressure difference across an infinite plate with shear and rotary inertia over its normal velocity, Pa s/m.
 *
 * Equation, k = omega sin(theta)/c, B and G with (1 + j eta), I = rho h^3/12, S = kappa G h:
 * Z = [(B k^2 - I omega^2)(k^2 - omega^2 m/S) - m omega^2]/[j omega (1 + (B k^2 - I omega^2)/S)].
 * Without shear (S infinite) and without I it is `plateImpedance`.
 * Units: Pa, m, kg/m3, Hz.
 * Source: R.D. Mindlin, J. Appl. Mech. 18 (1951) 31 (from memory, the impedance derived from his equation of motion).
 * Valid as long as the plate does not change thickness: below the first thickness resonance, f h below about 0.4 of the
 * shear speed.
 * Errors: ArgumentError for a plate, angle or frequency that cannot be.
 */
export function thickPlateImpedance(plate: ThickPlate, hz: number, sinTheta: number, air: Air): Complex {
  checkThickPlate(plate);
  requireFrequency(hz);
  requireNumber('sine of the angle', sinTheta, { atLeast: 0, atMost: 1 });
  const omega = 2 * Math.PI * hz;
  const mass = plate.density * plate.thickness;
  const rotary = (plate.density * plate.thickness ** 3) / 12;
  const square = ((omega / air.soundSpeed) * sinTheta) ** 2;
  const lossy = complex(1, plate.lossFactor);
  const bending = scale(lossy, bendingStiffness(plate) * square);
  const turning: Complex = { re: bending.re - rotary * omega ** 2, im: bending.im };
  const shear = scale(lossy, shearStiffness(plate));
  const inertia = divide(complex(omega ** 2 * mass), shear);
  const product = multiply(turning, { re: square - inertia.re, im: -inertia.im });
  const share = divide(turning, shear);
  return divide(
    { re: product.re - mass * omega ** 2, im: product.im },
    multiply(complex(0, omega), { re: 1 + share.re, im: share.im }),
  );
}

/**
 * Critical frequency of a plate with shear and rotary inertia, Hz; infinite when its shear waves are slower than sound.
 *
 * Equation: omega^2 = m/[(B/c^2 - I)(1/c^2 - m/S)]. Units and source: see `thickPlateImpedance`; solved here for k = omega/c.
 * A thin plate has it at `criticalFrequency`; shear moves it up.
 */
export function thickPlateCriticalFrequency(plate: ThickPlate, air: Air): number {
  checkThickPlate(plate);
  const mass = plate.density * plate.thickness;
  const slowness = 1 / air.soundSpeed ** 2;
  const bending = bendingStiffness(plate) * slowness - (plate.density * plate.thickness ** 3) / 12;
  const shear = slowness - mass / shearStiffness(plate);
  if (!(bending > 0 && shear > 0)) return Number.POSITIVE_INFINITY;
  return Math.sqrt(mass / (bending * shear)) / (2 * Math.PI);
}

function shearStiffness(plate: ThickPlate): number {
  const modulus = plate.shearModulus ?? plate.youngsModulus / (2 * (1 + plate.poissonRatio));
  return mindlinShearFactor * modulus * plate.thickness;
}

function checkThickPlate(plate: ThickPlate): void {
  checkPlate(plate);
  requireNumber('plate thickness', plate.thickness, { above: 0, unit: 'metres' });
  requireNumber('plate modulus', plate.youngsModulus, { above: 0, unit: 'Pa' });
  if (plate.shearModulus !== undefined) {
    requireNumber('shear modulus', plate.shearModulus, { above: 0, unit: 'Pa' });
  }
}
