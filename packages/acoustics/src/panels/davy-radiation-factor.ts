import type { Air } from '../air/air-properties.js';
import { requireNumber } from '../errors/require-number.js';
import type { PanelSize } from '../layered/layer.js';

const width = 1.3;
const offset = 0.124;

/**
 * Radiation factor of a finite panel in a baffle that carries a plane wave of the trace of sound at an angle, in closed
 * form.
 *
 * Equation, g = cos(theta), 2a = 4 S/U, k = 2 pi f/c: p = 1.3 sqrt(pi/(2 k a)) but no more than 1,
 * h = 1/((2/3) sqrt(2 k a/pi) - 0.124), q = pi/(2 k^2 a^2), alpha = h/p - 1;
 * s = 1/sqrt(g^2 + q^2) for g from p to 1, s = 1/sqrt((h - alpha g)^2 + q^2) below p.
 * Units: sizes in m, area S in m2, circumference U in m; the result has no unit.
 * Source: J.L. Davy, J. Acoust. Soc. Am. 126 (2009) 871 (from memory; held against the exact `finiteRadiationFactor`).
 * Valid for k a above 1; the low limit of small k a, k^2 S/(2 pi), is met within 1 dB for a square.
 * Errors: ArgumentError for a frequency or side that is not above 0 or a cosine outside 0 .. 1.
 */
export function davyRadiationFactor(hz: number, cosTheta: number, size: PanelSize, air: Air): number {
  requireNumber('frequency', hz, { above: 0, unit: 'Hz' });
  requireNumber('cosine of the angle', cosTheta, { atLeast: 0, atMost: 1 });
  requireNumber('width of the panel', size.width, { above: 0, unit: 'metres' });
  requireNumber('height of the panel', size.height, { above: 0, unit: 'metres' });
  const half = (size.width * size.height) / (size.width + size.height);
  const ka = ((2 * Math.PI * hz) / air.soundSpeed) * half;
  const q = Math.PI / (2 * ka * ka);
  const p = Math.min(1, width * Math.sqrt(Math.PI / (2 * ka)));
  if (cosTheta >= p) return 1 / Math.hypot(cosTheta, q);
  const slope = (2 / 3) * Math.sqrt((2 * ka) / Math.PI) - offset;
  // Below k a of about 0.05 the line has no meaning; q alone rules there.
  if (slope <= 0) return 1 / q;
  const h = 1 / slope;
  return 1 / Math.hypot(h - (h / p - 1) * cosTheta, q);
}
