import type { Air } from '../air/air-properties.js';
import { ArgumentError } from '../errors/argument-error.js';
import { requireNumber } from '../errors/require-number.js';
import { add, type Complex, complex, multiply, squaredSize } from '../math/complex.js';
import { apertureTransmissionLoss } from './aperture-transmission-loss.js';
import { channelMatrix, narrowGapMedium } from './narrow-gap-medium.js';
import { slitMouthImpedance } from './slit-transmission-loss.js';

/** A round hole with a rigid cable through its middle, m. */
export type CableHole = { readonly holeRadius: number; readonly cableRadius: number; readonly depth: number };

/** Cable over hole radius below which the hole counts as a round one of the remaining area: the ring is no narrow gap. */
const narrowRing = 0.5;

/**
 * Transmission loss of the ring of air round a cable in a hole, dB, referred to the area of the ring; infinite when tight.
 *
 * Equation: as `slitTransmissionLoss` with a gap w = R - r bent to a ring of mean radius a = (R + r)/2: mouth resistance
 * rho c times the smaller of k^2 a w and k w/2, mouth reactance rho c (k w/pi) times the smaller of ln(8 a/w) + 3/2 (a ring
 * small against the wavelength) and that of a straight slit. For r below R/2 it is the round hole of the same area.
 * Units: m, Hz.
 * Source: derived here; the ring's reactance is the mean potential of a thin ring of sources in a wall.
 * Valid for a ring narrower than its radius. A cable that lies against the hole lets up to 2.5 times as much air through
 * where friction rules (from memory). The cable itself is taken as rigid and tight.
 * Errors: ArgumentError for a cable thicker than the hole, or lengths below 0.
 */
export function cableHoleTransmissionLoss({ holeRadius, cableRadius, depth }: CableHole, hz: number, air: Air): number {
  requireNumber('radius of the hole', holeRadius, { atLeast: 0, unit: 'metres' });
  requireNumber('radius of the cable', cableRadius, { atLeast: 0, unit: 'metres' });
  requireNumber('depth of the hole', depth, { atLeast: 0, unit: 'metres' });
  requireNumber('frequency', hz, { above: 0, unit: 'Hz' });
  if (cableRadius > holeRadius) {
    throw new ArgumentError('radius of the cable', cableRadius, `no more than that of the hole, ${holeRadius}`);
  }
  const gap = holeRadius - cableRadius;
  if (gap === 0) return Number.POSITIVE_INFINITY;
  if (cableRadius < narrowRing * holeRadius) {
    return apertureTransmissionLoss({ radius: Math.sqrt(holeRadius ** 2 - cableRadius ** 2), depth }, hz, air);
  }
  const mouth = ringMouthImpedance((2 * Math.PI * hz) / air.soundSpeed, gap, (holeRadius + cableRadius) / 2, air);
  const { a, b, c, d } = channelMatrix(narrowGapMedium(gap, hz, air), depth);
  const sum = add(add(multiply(add(a, d), mouth), b), multiply(c, multiply(mouth, mouth)));
  const passed = (8 * air.impedance * mouth.re) / squaredSize(sum);
  // No mouth draws more from a diffuse field than 2 rho c over its own resistance.
  return -10 * Math.log10(Math.min(passed, (2 * air.impedance) / mouth.re));
}

function ringMouthImpedance(k: number, gap: number, radius: number, air: Air): Complex {
  const straight = slitMouthImpedance(k * gap, air);
  const resistance = Math.min(air.impedance * k * k * radius * gap, straight.re);
  const reactance = ((air.impedance * k * gap) / Math.PI) * (Math.log((8 * radius) / gap) + 1.5);
  // A straight strip many wavelengths long stores less near field than a small ring of the same width would.
  return complex(resistance, Math.min(reactance, straight.im > 0 ? straight.im : reactance));
}
