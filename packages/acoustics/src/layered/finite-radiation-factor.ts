import { requireNumber } from '../errors/require-number.js';
import { besselJ0 } from '../math/bessel.js';
import { gaussLegendre } from '../math/gauss-legendre.js';
import type { PanelSize } from './layer.js';

const rule = gaussLegendre(16);
/** Radians of phase that one application of the rule covers; the 16 points resolve it to about 1e-8. */
const phasePerPiece = 24;
/** Pieces per range of the overlap at least, because its slope is not smooth at the ends of the ranges. */
const fewestPieces = 3;

/**
 * Radiation efficiency of a rectangular window in a baffle that moves as a plane travelling wave, averaged over the
 * directions of travel in its plane.
 *
 * Equation: sigma = k Integral_0^D sin(k r) J0(k r sin theta) gamma(r) dr, D the diagonal, with `overlap` for gamma. It is
 * the fourfold integral of the radiated power over a window a x b, reduced exactly: two integrations leave the overlap
 * of the window with itself, and the azimuth average turns the travelling wave into J0.
 * Units: k in rad/m, sizes in m; the result has no unit. An infinite window gives 1/cos theta.
 * Source: M. Villot, C. Guigou, L. Gagliardini, J. Sound Vib. 245 (2001) 433, spatial windowing (from memory); the
 * reduction is derived here.
 * Valid for a flat window in a large flat baffle.
 * Errors: ArgumentError for a wavenumber or a sine below 0, or a width or height that is not above 0.
 */
export function finiteRadiationFactor(k: number, sinTheta: number, size: PanelSize): number {
  requireNumber('wavenumber', k, { atLeast: 0, unit: 'rad/m' });
  requireNumber('sine of the angle', sinTheta, { atLeast: 0 });
  requireNumber('width of the window', size?.width, { above: 0, unit: 'metres' });
  requireNumber('height of the window', size?.height, { above: 0, unit: 'metres' });
  return finiteRadiationFactors(k, [sinTheta], size)[0]!;
}

/** The same at several angles for the price of fewer sines: only J0 depends on the angle. Checks nothing: inner loop. */
export function finiteRadiationFactors(k: number, sines: readonly number[], size: PanelSize): number[] {
  const short = Math.min(size.width, size.height);
  const long = Math.max(size.width, size.height);
  const places: number[] = [];
  const parts: number[] = [];
  const addRange = (from: number, to: number) => {
    const pieces = Math.max(fewestPieces, Math.ceil(((to - from) * 2 * k) / phasePerPiece));
    const half = (to - from) / pieces / 2;
    for (let piece = 0; piece < pieces; piece++) {
      const middle = from + (2 * piece + 1) * half;
      for (let i = 0; i < rule.nodes.length; i++) {
        const r = middle + half * rule.nodes[i]!;
        places.push(k * r);
        parts.push(half * rule.weights[i]! * Math.sin(k * r) * overlap(r, short, long));
      }
    }
  };
  addRange(0, short);
  if (long > short) addRange(short, long);
  addRange(long, Math.hypot(short, long));
  return sines.map((sine) => {
    let sum = 0;
    for (let i = 0; i < places.length; i++) sum += parts[i]! * besselJ0(sine * places[i]!);
    return k * sum;
  });
}

/**
 * Share of a rectangle short x long that overlaps with itself when shifted by r, averaged over the directions of shift.
 *
 * Equation: (2/pi) Integral_0^(pi/2) (1 - r cos(phi)/long)+ (1 - r sin(phi)/short)+ dphi, in closed form.
 */
export function overlap(r: number, short: number, long: number): number {
  if (r <= short) return 1 - (2 * r * (short + long) - r * r) / (Math.PI * short * long);
  const overShort = Math.sqrt(r * r - short * short);
  if (r <= long) {
    return (2 / Math.PI) * (Math.asin(short / r) - short / (2 * long) - (r - overShort) / short);
  }
  if (r >= Math.hypot(short, long)) return 0;
  const overLong = Math.sqrt(r * r - long * long);
  return (
    (2 / Math.PI) *
    (Math.asin(short / r) -
      Math.acos(long / r) -
      (short - overLong) / long -
      (long - overShort) / short +
      (short * short + long * long - r * r) / (2 * short * long))
  );
}
