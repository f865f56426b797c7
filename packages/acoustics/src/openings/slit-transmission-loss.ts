import type { Air } from '../air/air-properties.js';
import { requireNumber } from '../errors/require-number.js';
import { requireOneOf } from '../errors/require-one-of.js';
import { add, type Complex, complex, multiply, squaredSize } from '../math/complex.js';
import { channelMatrix, narrowGapMedium } from './narrow-gap-medium.js';

/** A long straight slit through a wall. */
export type Slit = {
  /** m, clear width */
  readonly gap: number;
  /** m, through the wall */
  readonly depth: number;
  /** In the middle of a wall, or along an edge where another surface meets it. */
  readonly position: 'mid' | 'edge';
};

const eulerConstant = 0.5772156649015329;
/** Widest slit, as k w in the middle of a wall, that the model of a narrow strip serves; a wider one is an open area. */
const widestSlit = 4;

/**
 * Transmission loss of a long straight slit in a diffuse field, dB, referred to the slit's own area; it can be negative.
 *
 * Model: a two-port of the air in the slit with friction (`narrowGapMedium`) between the radiation impedances of its two
 * mouths. Equations, K = k w: mouth Zr = rho c (K/2 + j K e), e = (1/pi)(ln(8/K) - 0.57722); velocity at the far mouth
 * v = p_b/(A Zr + B + C Zr^2 + D Zr); squared pressure on the closed mouth 8 rho c per incident intensity (a wall doubles
 * the pressure of every wave); tau = 8 rho c Re(Zr)/|A Zr + B + C Zr^2 + D Zr|^2. At an edge the second surface mirrors
 * the slit: Zr is that of twice the width, and the pressure on it is doubled once more.
 * Units: gap and depth in m, hz in Hz.
 * Source: derived here; mouth impedance as in M.C. Gomperts, T. Kihlman, Acustica 18 (1967) 144 (from memory), to whose
 * formula it tends for wide slits (`inviscidSlitTransmissionLoss`).
 * Valid for K < 1 or so; tau is never above 4/K, all that such a mouth can draw from the field, and from K = 4 on the slit
 * counts as an open area with tau = 1. Bends and rough faces are left out; for seals see `jointTransmissionLoss`.
 * Errors: ArgumentError for a width or depth below 0.
 *
 * @example
 * ```ts
 * import { airProperties } from '@boothwright/acoustics/air';
 * import { slitTransmissionLoss } from '@boothwright/acoustics/openings';
 *
 * const air = airProperties({ temperature: 20, relativeHumidity: 0.5 });
 * // A gap of 1 mm through a door of 50 mm, at 500 Hz.
 * slitTransmissionLoss({ gap: 0.001, depth: 0.05, position: 'mid' }, 500, air); // 8.63
 * ```
 */
export function slitTransmissionLoss(slit: Slit, hz: number, air: Air): number {
  checkSlit(slit);
  requireNumber('frequency', hz, { above: 0, unit: 'Hz' });
  const { gap, depth } = slit;
  if (gap === 0) return Number.POSITIVE_INFINITY;
  return slitLoss(slit, channelMatrix(narrowGapMedium(gap, hz, air), depth), hz, air);
}

/**
 * The same without friction in the slit: the reference of Gomperts and Kihlman, written as a two-port.
 *
 * It overestimates what passes through slits narrower than about 1 mm, and grossly so below 0.2 mm, where the whole gap
 * is boundary layer.
 */
export function inviscidSlitTransmissionLoss(slit: Slit, hz: number, air: Air): number {
  checkSlit(slit);
  requireNumber('frequency', hz, { above: 0, unit: 'Hz' });
  if (slit.gap === 0) return Number.POSITIVE_INFINITY;
  const medium = {
    characteristicImpedance: complex(air.impedance),
    wavenumber: complex((2 * Math.PI * hz) / air.soundSpeed),
  };
  return slitLoss(slit, channelMatrix(medium, slit.depth), hz, air);
}

/** Transmission loss of a slit whose inside is the two-port `channel`; see `slitTransmissionLoss`. */
export function slitLoss(slit: Slit, channel: ReturnType<typeof channelMatrix>, hz: number, air: Air): number {
  const mirror = slit.position === 'edge' ? 2 : 1;
  const k = ((2 * Math.PI * hz) / air.soundSpeed) * slit.gap * mirror;
  if (k >= widestSlit) return 0;
  const mouth = slitMouthImpedance(k, air);
  const { a, b, c, d } = channel;
  const sum = add(add(multiply(add(a, d), mouth), b), multiply(c, multiply(mouth, mouth)));
  const transmission = (8 * mirror * air.impedance * mouth.re) / squaredSize(sum);
  return -10 * Math.log10(Math.min(transmission, (4 * mirror) / k));
}

/**
 * Radiation impedance of a narrow strip in a wall, Pa s/m, for k times its width.
 *
 * Equation: Zr = rho c (K/2 + j (K/pi)(ln(8/K) - 0.57722)). Source: see `slitTransmissionLoss`. Valid for K below 1 or so.
 */
export function slitMouthImpedance(k: number, air: Air): Complex {
  return complex((air.impedance * k) / 2, ((air.impedance * k) / Math.PI) * (Math.log(8 / k) - eulerConstant));
}

/**
 * Rejects a slit that cannot exist.
 * Errors: ArgumentError that names the property.
 */
export function checkSlit({ gap, depth, position }: Slit): void {
  requireOneOf('position of the slit', position, ['mid', 'edge']);
  requireNumber('width of the slit', gap, { atLeast: 0, unit: 'metres' });
  requireNumber('depth of the slit', depth, { atLeast: 0, unit: 'metres' });
}
