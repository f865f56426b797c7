import { requireNumber } from '../errors/require-number.js';
import { requirePositive } from './require-positive.js';

/**
 * What a flat plate of finite size reflects against an endless one, dB, at most a few dB above 0.
 *
 * Equation: 10 lg(K_1 K_2), K = ((C(v_2) - C(v_1))^2 + (S(v_2) - S(v_1))^2) / 2 for each direction of the plate, C and S the
 * Fresnel integrals, v = 2 e cos / sqrt(lambda a), e the distance of an edge from the point of reflection (with its sign),
 * a = 2 a_1 a_2 / (a_1 + a_2) of the two distances to that point; cos the cosine of the angle of incidence where the
 * direction lies in the plane of incidence, 1 across it.
 * Units: m, Hz. Each direction of the plate: the distances of its two edges from the point of reflection along it.
 * Source: J. H. Rindel, Attenuation of sound reflections due to diffraction, Nordic Acoustical Meeting 1986 (from memory).
 * Valid: a plate at least about half a wavelength from both ends; a plate smaller than a wavelength is only rough.
 * Errors: ArgumentError for a distance, cosine or wavelength that can't be.
 */
export function finiteReflector(
  edges: readonly [ReflectorEdges, ReflectorEdges],
  distances: readonly [number, number],
  wavelength: number,
): number {
  requirePositive('wavelength', wavelength, 'metres');
  for (const distance of distances) requirePositive('distance to the plate', distance, 'metres');
  const [to, from] = distances;
  const a = (2 * to * from) / (to + from);
  const gain = edges.reduce((product, { from: start, to: end, cosine }) => {
    requireNumber('cosine of incidence', cosine, { atLeast: 0, atMost: 1 });
    const scale = (2 * cosine) / Math.sqrt(wavelength * a);
    const [c1, s1] = fresnel(scale * start);
    const [c2, s2] = fresnel(scale * end);
    return (product * ((c2 - c1) ** 2 + (s2 - s1) ** 2)) / 2;
  }, 1);
  return 10 * Math.log10(Math.max(gain, 1e-12));
}

/** m from the point of reflection to the two edges along one direction of the plate. */
export type ReflectorEdges = { readonly from: number; readonly to: number; readonly cosine: number };

/**
 * Fresnel integrals C(x) and S(x) of cos and sin of (pi/2) t^2: the power series up to 1.6, above it the auxiliary
 * functions f and g by their rational approximations (M. Abramowitz, I. A. Stegun, Handbook of Mathematical Functions,
 * 7.3.32 and 7.3.33, from memory; error below 0.002).
 */
export function fresnel(x: number): readonly [number, number] {
  const size = Math.abs(x);
  const sign = x < 0 ? -1 : 1;
  const square = (Math.PI / 2) * size * size;
  if (size <= 1.6) {
    let term = size;
    let c = 0;
    let s = 0;
    for (let n = 0; n < 40 && Math.abs(term) > 1e-14; n++) {
      const part = term / (2 * n + 1);
      if (n % 2 === 0) c += (n % 4 === 0 ? 1 : -1) * part;
      else s += (n % 4 === 1 ? 1 : -1) * part;
      term *= square / (n + 1);
    }
    return [sign * c, sign * s];
  }
  const f = (1 + 0.926 * size) / (2 + 1.792 * size + 3.104 * size * size);
  const g = 1 / (2 + 4.142 * size + 3.492 * size ** 2 + 6.67 * size ** 3);
  const sin = Math.sin(square);
  const cos = Math.cos(square);
  return [sign * (0.5 + f * sin - g * cos), sign * (0.5 - f * cos - g * sin)];
}
