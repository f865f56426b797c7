import type { Air } from '../air/air-properties.js';
import { requireNumber } from '../errors/require-number.js';
import type { PanelSize } from '../layered/layer.js';

/** The space between two leaves. */
export type LeafCavity = {
  /** m, from face to face */
  readonly depth: number;
  /** m of it filled with fibre; 0 for an empty cavity. */
  readonly fillDepth: number;
};

/**
 * Rejects a cavity that cannot exist.
 * Errors: ArgumentError that names depth or fill.
 */
export function checkLeafCavity({ depth, fillDepth }: LeafCavity): void {
  requireNumber('depth of the cavity', depth, { above: 0, unit: 'metres' });
  requireNumber('depth of the fill', fillDepth, { atLeast: 0, atMost: depth, unit: 'metres' });
}

/**
 * Stiffness per area of the air in a cavity, Pa/m.
 *
 * Equation: two springs in series, 1/s = (d - t)/(rho c^2) + t/P0: free air is compressed without exchange of heat, air
 * between fibres at one temperature. t is the depth of the fill; porosity taken as 1.
 * Source: gas law (derived). Valid for cavities much thinner than a wavelength and fibre that is fine enough to keep the
 * temperature, usual wool below a few hundred Hz.
 */
export function cavityStiffness(cavity: LeafCavity, air: Air): number {
  checkLeafCavity(cavity);
  const { depth, fillDepth } = cavity;
  return 1 / ((depth - fillDepth) / (air.density * air.soundSpeed ** 2) + fillDepth / air.pressure);
}

/**
 * Absorption area of a cavity over the area of its wall, no unit.
 *
 * Equation: A/S = 2 alpha_face + alpha_rim U d/S, U and S of the panel; the two faces and the rim of the cavity.
 * Units: m. Source: Sabine's sum of areas (common practice). Fill that covers a face counts there, a lined rim at the rim.
 * Errors: ArgumentError for a size or a coefficient that cannot be.
 */
export function cavityAbsorptionRatio(
  depth: number,
  size: PanelSize,
  absorption: { readonly face: number; readonly rim: number },
): number {
  requireNumber('depth of the cavity', depth, { above: 0, unit: 'metres' });
  requireNumber('width of the wall', size.width, { above: 0, unit: 'metres' });
  requireNumber('height of the wall', size.height, { above: 0, unit: 'metres' });
  requireNumber('absorption of the faces', absorption.face, { atLeast: 0, atMost: 1 });
  requireNumber('absorption of the rim', absorption.rim, { atLeast: 0, atMost: 1 });
  const rimArea = (2 * (size.width + size.height) * depth) / (size.width * size.height);
  return 2 * absorption.face + absorption.rim * rimArea;
}
