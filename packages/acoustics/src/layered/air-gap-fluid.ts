import type { Air } from '../air/air-properties.js';
import { requireNumber } from '../errors/require-number.js';
import { type Complex, complex, divide, multiply } from '../math/complex.js';
import { narrowGapMedium } from '../openings/narrow-gap-medium.js';
import { equivalentFluid } from '../porous/porous-medium.js';
import type { PanelSize } from './layer.js';

/** What damps the sound that runs along an air gap between two leaves. */
export type GapLosses = {
  /** Friction and heat exchange at the two leaves. */
  readonly friction: boolean;
  /** 1/s, energy lost at the rim of the gap, by index of the layer; no loss where absent. See `rimLossRate`. */
  readonly rimRates?: readonly number[];
  /** Width and height of the cavity that holds a layer, by index of the layer; unlimited where absent. See `lateralMotion`. */
  readonly bays?: readonly (PanelSize | undefined)[];
  /** Share of the squared trace of the incident wave with which the sound in those cavities runs sideways; 1 when absent. */
  readonly lateralShare?: number;
};

/** Gaps of unlimited extent between real leaves. */
export const frictionOnly: GapLosses = { friction: true };

/** Gaps that lose nothing: an ideal for tests and for comparison with textbook formulas. */
export const losslessGaps: GapLosses = { friction: false };

/**
 * Absorption coefficient of the rim of a cavity: bare wood, plaster or metal.
 * Common practice, handbooks give 0.05 to 0.15 for such surfaces between 125 Hz and 2 kHz; a lined reveal has far more.
 */
export const defaultRimAbsorption = 0.1;

/**
 * Energy lost per time by sound that runs to and fro in a flat cavity, 1/s.
 *
 * Equation: c a U/(pi S), a the absorption coefficient of the rim, U and S circumference and area of the cavity: pi S/U is
 * the mean free path in a plane. c in m/s, width and height in m.
 * Source: derived, the analogue of Sabine's formula in two dimensions. Valid for cavities thinner than half a wavelength.
 * Errors: ArgumentError for an absorption that is not from 0 to 1, or a width or height that is not above 0.
 */
export function rimLossRate(absorption: number, width: number, height: number, air: Air): number {
  requireNumber('absorption of the rim', absorption, { atLeast: 0, atMost: 1 });
  requireNumber('width of the cavity', width, { above: 0, unit: 'metres' });
  requireNumber('height of the cavity', height, { above: 0, unit: 'metres' });
  return (air.soundSpeed * absorption * 2 * (1 / width + 1 / height)) / Math.PI;
}

/**
 * An air gap as a fluid whose sideways motion rubs along the leaves: k_z^2 = `square` - `trace` k^2 sin^2(theta), and
 * `product` = Z k_z. Undefined when it is as free air: nothing damps it and no bay holds it.
 *
 * Equations: square = omega^2 rho/K, product = omega rho, trace = rho/rho_s; rho_s and K of `narrowGapMedium` for the
 * sideways motion and the compression, K times (1 + j rate/omega) for the loss at the rim. The motion across the gap has
 * no wall to rub along.
 * Source: derived. It matters where an undamped gap would have very sharp resonances at oblique incidence.
 */
export function airGapFluid(
  thickness: number,
  hz: number,
  air: Air,
  losses: GapLosses,
  index: number,
): { square: Complex; product: Complex; trace: Complex } | undefined {
  const rate = losses.rimRates?.[index] ?? 0;
  const runsFreely = losses.bays?.[index] === undefined || (losses.lateralShare ?? 1) === 1;
  if (!losses.friction && rate === 0 && runsFreely) return undefined;
  const omega = 2 * Math.PI * hz;
  const rim = complex(1, rate / omega);
  const along = losses.friction
    ? equivalentFluid(narrowGapMedium(thickness, hz, air), hz)
    : { density: complex(air.density), bulkModulus: complex(air.density * air.soundSpeed ** 2) };
  return {
    square: divide(complex(omega * omega * air.density), multiply(along.bulkModulus, rim)),
    product: complex(omega * air.density),
    trace: divide(complex(air.density), along.density),
  };
}
