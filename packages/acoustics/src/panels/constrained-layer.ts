import type { Air } from '../air/air-properties.js';
import { requireNumber } from '../errors/require-number.js';
import { add, type Complex, complex, divide, multiply, scale } from '../math/complex.js';
import { bendingStiffness } from './bending-stiffness.js';
import { stretchStiffness } from './laminated-panel.js';
import { checkPlate, type Plate } from './plate.js';
import { requireFrequency, type SinglePanel } from './single-panel.js';

/** Two plates with a soft damping layer between them that is sheared when they bend. */
export type ConstrainedLayerPanel = {
  readonly base: Plate;
  readonly cover: Plate;
  /** The layer between: thickness in m, density in kg/m3, shear modulus in Pa. */
  readonly core: {
    readonly thickness: number;
    readonly density: number;
    readonly shearModulus: number;
    readonly lossFactor: number;
  };
};

const bisections = 200;

/**
 * Effective bending stiffness and loss factor of a constrained-layer panel for a bending wavenumber k.
 *
 * Equation, K = E h/(1 - nu^2) of a plate with (1 + j eta) of its own, B likewise, 1/K12 = 1/K1 + 1/K2, d = hc + (h1 + h2)/2:
 * B = B1 + B2 + K12 d^2 X/(1 + X), X = G (1 + j etac)/(hc k^2 K12).
 * X far above 1 (soft bending, long waves): glued; far below 1: sliding. The loss is largest in between.
 * Units: k in rad/m, moduli in Pa; result stiffness in N m.
 * Source: D. Ross, E.E. Ungar, E.M. Kerwin, in J.E. Ruzicka (ed.): Structural Damping (1959) (from memory; derived again
 * here from the balance of shear and stretch). The stretch of the core itself is left out.
 * Valid while the core is far softer than the plates and does not change thickness.
 * Errors: ArgumentError for parts that cannot be or a wavenumber that is not above 0.
 */
export function constrainedLayerStiffness(panel: ConstrainedLayerPanel, wavenumber: number): SinglePanel {
  checkConstrainedLayer(panel);
  requireNumber('bending wavenumber', wavenumber, { above: 0, unit: 'rad/m' });
  const stiffness = complexStiffness(panel, wavenumber);
  return {
    surfaceMass: constrainedLayerMass(panel),
    stiffness: stiffness.re,
    lossFactor: stiffness.re > 0 ? stiffness.im / stiffness.re : 0,
  };
}

/**
 * The same at a frequency, for the free bending wave of the panel: k^4 = omega^2 m/Re(B(k)), solved by bisection.
 *
 * Units: Hz. Source and validity: see `constrainedLayerStiffness`.
 */
export function constrainedLayerPanelAt(panel: ConstrainedLayerPanel, hz: number): SinglePanel {
  checkConstrainedLayer(panel);
  requireFrequency(hz);
  requireNumber('stiffness of base and cover', bendingStiffness(panel.base) + bendingStiffness(panel.cover), {
    above: 0,
  });
  const target = (2 * Math.PI * hz) ** 2 * constrainedLayerMass(panel);
  // k^4 Re(B) rises with k; the limits are the glued and the sliding panel.
  const soft = bendingStiffness(panel.base) + bendingStiffness(panel.cover);
  let high = (target / soft) ** 0.25;
  let low = high / 1000;
  while (low ** 4 * complexStiffness(panel, low).re > target) low /= 10;
  for (let step = 0; step < bisections && high - low > 1e-13 * high; step++) {
    const middle = (low + high) / 2;
    if (middle ** 4 * complexStiffness(panel, middle).re > target) high = middle;
    else low = middle;
  }
  return constrainedLayerStiffness(panel, (low + high) / 2);
}

/**
 * Critical frequency of a constrained-layer panel, Hz: where its free bending wave is as fast as sound in air.
 *
 * Equation: omega^2 = B(k) k^4/m with k = omega/c, solved by bisection between the critical frequencies of the glued and
 * of the sliding panel. Source and validity: see `constrainedLayerStiffness`.
 */
export function constrainedLayerCriticalFrequency(panel: ConstrainedLayerPanel, air: Air): number {
  checkConstrainedLayer(panel);
  const mass = constrainedLayerMass(panel);
  const soft = bendingStiffness(panel.base) + bendingStiffness(panel.cover);
  if (soft === 0) return Number.POSITIVE_INFINITY;
  const of = (stiffness: number) => (air.soundSpeed ** 2 / (2 * Math.PI)) * Math.sqrt(mass / stiffness);
  const excess = (hz: number) => hz - of(complexStiffness(panel, (2 * Math.PI * hz) / air.soundSpeed).re);
  let high = of(soft);
  let low = high / 1000;
  while (excess(low) > 0) low /= 10;
  for (let step = 0; step < bisections && high - low > 1e-12 * high; step++) {
    const middle = (low + high) / 2;
    if (excess(middle) > 0) high = middle;
    else low = middle;
  }
  return (low + high) / 2;
}

/** Mass of both plates and the layer between, kg/m2. */
export function constrainedLayerMass({ base, cover, core }: ConstrainedLayerPanel): number {
  return base.density * base.thickness + cover.density * cover.thickness + core.density * core.thickness;
}

function complexStiffness({ base, cover, core }: ConstrainedLayerPanel, wavenumber: number): Complex {
  const lossy = (value: number, lossFactor: number) => complex(value, value * lossFactor);
  const own = add(lossy(bendingStiffness(base), base.lossFactor), lossy(bendingStiffness(cover), cover.lossFactor));
  const stretchBase = lossy(stretchStiffness(base), base.lossFactor);
  const stretchCover = lossy(stretchStiffness(cover), cover.lossFactor);
  const sum = add(stretchBase, stretchCover);
  // A plate that cannot be stretched by force holds nothing.
  if (stretchBase.re === 0 || stretchCover.re === 0) return own;
  const together = divide(multiply(stretchBase, stretchCover), sum);
  const arm = core.thickness + (base.thickness + cover.thickness) / 2;
  if (core.thickness === 0) return add(own, scale(together, arm ** 2));
  const shear = scale(lossy(core.shearModulus, core.lossFactor), 1 / (core.thickness * wavenumber ** 2));
  // K12 X/(1 + X) with X = shear/K12, written so that a rigid and a missing core both stay finite.
  return add(own, scale(divide(multiply(together, shear), add(together, shear)), arm ** 2));
}

function checkConstrainedLayer({ base, cover, core }: ConstrainedLayerPanel): void {
  checkPlate(base);
  checkPlate(cover);
  requireNumber('thickness of the damping layer', core.thickness, { atLeast: 0, unit: 'metres' });
  requireNumber('density of the damping layer', core.density, { atLeast: 0, unit: 'kg/m3' });
  requireNumber('shear modulus of the damping layer', core.shearModulus, { atLeast: 0, unit: 'Pa' });
  requireNumber('loss factor of the damping layer', core.lossFactor, { atLeast: 0 });
}
