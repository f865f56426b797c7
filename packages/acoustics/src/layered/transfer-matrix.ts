import type { Air } from '../air/air-properties.js';
import { requireNumber } from '../errors/require-number.js';
import {
  add,
  type Complex,
  complex,
  cosine,
  divide,
  multiply,
  scale,
  sine,
  squareRoot,
  subtract,
} from '../math/complex.js';
import { plateImpedance } from '../panels/plate-impedance.js';
import { airGapFluid, frictionOnly, type GapLosses } from './air-gap-fluid.js';
import { checkLayers, type Layer } from './layer.js';
import { isPresent, mediumOf, screenImpedance } from './prepared-stack.js';

/** [p, v] outside = [[a, b], [c, d]] [p, v] inside. */
export type Matrix2 = { readonly a: Complex; readonly b: Complex; readonly c: Complex; readonly d: Complex };

const one = complex(1);
const zero = complex(0);
const identity: Matrix2 = { a: one, b: zero, c: zero, d: one };

/**
 * Transfer matrix of one layer in pressure (Pa) and normal velocity (m/s), from its inside face to its outside face.
 *
 * Equations: plate, sheet and cloth [[1, Z], [0, 1]] with Z of `plateImpedance`, j omega m, or flow resistance beside
 * j omega m; fluid of thickness d [[cos, j Z sin], [j sin/Z, cos]] of k_z d with k_z = sqrt(k_p^2 - k^2 sin^2 theta) and
 * Z = Z_c k_p/k_z; an air gap with the friction of `airGapFluid` unless `losses` says otherwise.
 * Source: common practice, J.F. Allard, N. Atalla: Propagation of Sound in Porous Media, 2nd ed. (2009), ch. 11.
 * Valid for layers of infinite extent; porous layers are fluids, so their frame carries no stress.
 * Errors: ArgumentError for a layer that cannot exist, a frequency that is not above 0 or a sine outside 0 .. 1.
 */
export function transferMatrix(
  layer: Layer,
  hz: number,
  sinTheta: number,
  air: Air,
  losses: GapLosses = frictionOnly,
): Matrix2 {
  checkLayers([layer]);
  return matrixOf(layer, hz, sinTheta, air, losses);
}

function matrixOf(layer: Layer, hz: number, sinTheta: number, air: Air, losses: GapLosses): Matrix2 {
  requireNumber('frequency', hz, { above: 0, unit: 'Hz' });
  requireNumber('sine of the angle of incidence', sinTheta, { atLeast: 0, atMost: 1 });
  if (!isPresent(layer)) return identity;
  switch (layer.kind) {
    case 'plate':
      return { ...identity, b: plateImpedance(layer, hz, sinTheta, air) };
    case 'limp-sheet':
      return { ...identity, b: complex(0, 2 * Math.PI * hz * layer.surfaceMass) };
    case 'screen':
      return { ...identity, b: screenImpedance(layer, hz) };
    case 'air-gap': {
      const k = (2 * Math.PI * hz) / air.soundSpeed;
      const gap = airGapFluid(layer.thickness, hz, air, losses, 0) ?? {
        square: complex(k * k),
        product: complex(k * air.impedance),
        trace: one,
      };
      return fluidMatrix(gap.square, gap.product, gap.trace, layer.thickness, k * sinTheta);
    }
    case 'porous': {
      const { characteristicImpedance, wavenumber } = mediumOf(layer, hz, air);
      const product = multiply(characteristicImpedance, wavenumber);
      const trace = ((2 * Math.PI * hz) / air.soundSpeed) * sinTheta;
      return fluidMatrix(multiply(wavenumber, wavenumber), product, one, layer.thickness, trace);
    }
  }
}

/** A fluid with k_z^2 = `square` - `along` trace^2 and impedance `product`/k_z. */
function fluidMatrix(square: Complex, product: Complex, along: Complex, thickness: number, trace: number): Matrix2 {
  const normal = squareRoot(subtract(square, scale(along, trace * trace)));
  const phase = scale(normal, thickness);
  const normalImpedance = divide(product, normal);
  const turned = multiply(complex(0, 1), sine(phase));
  const cos = cosine(phase);
  return { a: cos, b: multiply(normalImpedance, turned), c: divide(turned, normalImpedance), d: cos };
}

/** Transfer matrix of a stack listed from outside to inside; see `transferMatrix`. */
export function stackMatrix(
  layers: readonly Layer[],
  hz: number,
  sinTheta: number,
  air: Air,
  losses: GapLosses = frictionOnly,
): Matrix2 {
  checkLayers(layers);
  return layers.map((layer) => matrixOf(layer, hz, sinTheta, air, losses)).reduce(multiplyMatrices, identity);
}

function multiplyMatrices(m: Matrix2, n: Matrix2): Matrix2 {
  return {
    a: add(multiply(m.a, n.a), multiply(m.b, n.c)),
    b: add(multiply(m.a, n.b), multiply(m.b, n.d)),
    c: add(multiply(m.c, n.a), multiply(m.d, n.c)),
    d: add(multiply(m.c, n.b), multiply(m.d, n.d)),
  };
}
