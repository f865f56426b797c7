import { requireNumber } from '../errors/require-number.js';
import { gaussLegendre } from '../math/gauss-legendre.js';
import { type AbsorberConditions, absorberAbsorption } from './absorber-absorption.js';
import type { AbsorberLayer } from './absorber-layer.js';

/** A curtain before a wall. */
export type Curtain = {
  /** Pa s/m, of the cloth laid flat */
  readonly flowResistance: number;
  /** kg/m2, of the cloth laid flat */
  readonly surfaceMass: number;
  /** Area of cloth over area of wall, 1 or more: 1 hangs flat, 2 is gathered to half its width. */
  readonly fullness: number;
  /** m, from the backing to the middle of the folds */
  readonly distance: number;
  /** m, from the front to the back of the folds; 0 for a flat cloth, at most twice the distance. */
  readonly foldDepth: number;
};

const rule = gaussLegendre(6);

/**
 * Absorption coefficient of a curtain, per area of wall, in the 21 third-octave bands.
 *
 * Model: per area of wall the air finds `fullness` times as much cloth beside each other, so the flow resistance falls and
 * the mass rises by that factor; folds put the cloth at distances spread evenly over their depth, and absorption is the mean
 * over these distances.
 * Source: derived; cloth as a resistance beside a mass before an air gap is common practice. Valid for folds narrower
 * than a wavelength in the first part and wider than the depth of the gap in the second, so folded curtains are an estimate:
 * prefer a measured row where one fits.
 * Errors: ArgumentError for a figure outside its range.
 */
export function curtainAbsorption(curtain: Curtain, conditions: AbsorberConditions): number[] {
  requireNumber('fullness', curtain.fullness, { atLeast: 1 });
  requireNumber('distance from the wall', curtain.distance, { atLeast: 0, unit: 'metres' });
  requireNumber('depth of the folds', curtain.foldDepth, { atLeast: 0, atMost: 2 * curtain.distance, unit: 'metres' });
  if (curtain.foldDepth === 0) return absorberAbsorption(curtainLayers(curtain, curtain.distance), conditions);
  const curves = rule.nodes.map((node) =>
    absorberAbsorption(curtainLayers(curtain, curtain.distance + (node * curtain.foldDepth) / 2), conditions),
  );
  return curves[0]!.map((_, band) => curves.reduce((sum, curve, i) => sum + (rule.weights[i]! / 2) * curve[band]!, 0));
}

/** The layers of a gathered cloth at one distance from the backing, in m. */
export function curtainLayers(
  { flowResistance, surfaceMass, fullness }: Pick<Curtain, 'flowResistance' | 'surfaceMass' | 'fullness'>,
  distance: number,
): AbsorberLayer[] {
  return [
    { kind: 'air-gap', thickness: distance },
    { kind: 'screen', flowResistance: flowResistance / fullness, surfaceMass: surfaceMass * fullness },
  ];
}
