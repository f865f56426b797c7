import { gaussLegendre } from '../math/gauss-legendre.js';
import type { Layer } from './layer.js';

/** Directions along the panel between grain and across; the plateau between two critical frequencies is smooth. */
const directions = 6;

/** The layers as a wave meets them at one angle to the grain, and the share of such waves in a diffuse field. */
export type GrainDirection = { readonly layers: readonly Layer[]; readonly share: number };

/**
 * Splits the waves of a diffuse field by their angle phi to the grain of wood.
 *
 * Equation: sqrt B(phi) = sqrt(Bx) cos^2 phi + sqrt(By) sin^2 phi, as if the twisting stiffness were sqrt(Bx By); Gauss-Legendre
 * directions from 0 to pi/2. One direction when no plate has a grain. All plates of a wall count as having it the same way.
 * Source: M. Heckl, Acustica 10 (1960) 109 (from memory).
 */
export function grainDirections(layers: readonly Layer[]): GrainDirection[] {
  if (!layers.some((layer) => layer.kind === 'plate' && layer.crossModulus !== undefined))
    return [{ layers, share: 1 }];
  const { nodes, weights } = gaussLegendre(directions);
  return Array.from(nodes, (node, index) => {
    const angle = (Math.PI / 4) * (node + 1);
    return { layers: layers.map((layer) => seenAt(layer, angle)), share: weights[index]! / 2 };
  });
}

function seenAt(layer: Layer, angle: number): Layer {
  if (layer.kind !== 'plate' || layer.crossModulus === undefined) return layer;
  const { crossModulus, ...plate } = layer;
  const along = Math.sqrt(plate.youngsModulus) * Math.cos(angle) ** 2;
  const across = Math.sqrt(crossModulus) * Math.sin(angle) ** 2;
  return { ...plate, youngsModulus: (along + across) ** 2 };
}
