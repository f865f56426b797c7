import type { Air } from '@boothwright/acoustics';
import type { AssemblyLayer, Material, Sourced } from '@boothwright/language';
import type { Memo } from '../memo/memo.js';
import { oncePer } from '../memo/once-per.js';
import type { FacePart } from './face-parts.js';
import { type ByBand, layersAdmittance } from './layers-admittance.js';

/**
 * Share by which the flow resistivity of fibre differs from its figure where the text states no tolerance. Evidence: from
 * memory; slabs of one product and the formulas that reckon it from the density differ by a third and more.
 */
export const resistivityShare = 0.3;

/** The same of the thickness of a lining. Evidence: from memory, 3 to 5 mm on a slab of 50 mm. */
export const depthShare = 0.1;

/**
 * Share of a wall that may stand still at its studs instead of moving as its layers do. Evidence: the project's own
 * judgement. Panels that resonate take more instead, so the change counts both ways.
 */
export const stiffShare = 0.5;

/**
 * Causes for which the walls may differ from their figures; each change counts both ways. Fibre has a best resistivity, so
 * that more and less can both take less: it is tried both ways.
 */
export const wallCauses = ['resistivity', 'resistivity', 'depth', 'stiffness'] as const;

/** Real parts of the admittance of a part of a wall by band, one list for each of `wallCauses`; `nominal` those it has. */
export function wallAlternatives(
  part: FacePart['layers'],
  nominal: ByBand<number>,
  air: Air,
  memo: Memo,
): ByBand<number>[] {
  if (typeof part === 'string') return wallCauses.map(() => nominal);
  const quick = (layers: FacePart['layers'], behind: 'wall' | 'rigid' = 'wall') =>
    layersAdmittance(layers, air, memo, behind, 1);
  const base = quick(part);
  const stiff = quick(part, 'rigid');
  const { denser, looser, deeper } = changed(part);
  const real = (values: ReturnType<typeof quick>) => (band: number) => values(band).re;
  const others = [
    real(quick(denser)),
    real(quick(looser)),
    real(quick(deeper)),
    (band: number) => (1 - stiffShare) * base(band).re + stiffShare * stiff(band).re,
  ];
  return others.map((other) => (band) => {
    const { re } = base(band);
    return re > 0 ? (nominal(band) * other(band)) / re : nominal(band);
  });
}

const changed = oncePer((part: readonly AssemblyLayer[]) => ({
  denser: part.map((layer) => withResistivity(layer, 1)),
  looser: part.map((layer) => withResistivity(layer, -1)),
  deeper: part.map(withDepth),
}));

function withResistivity(layer: AssemblyLayer, sign: 1 | -1): AssemblyLayer {
  if (layer.kind !== 'material' || layer.material.kind !== 'porous') return layer;
  const { resistivity } = layer.material;
  if (resistivity === undefined) return layer;
  const material: Material = { ...layer.material, resistivity: moved(resistivity, resistivityShare, sign) };
  return { ...layer, material };
}

function withDepth(layer: AssemblyLayer): AssemblyLayer {
  if (layer.kind !== 'material' || layer.material.kind !== 'porous' || layer.thickness === undefined) return layer;
  return { ...layer, thickness: moved(layer.thickness, depthShare, 1) };
}

/** By the stated tolerance, or else by the share; never to nothing. */
function moved({ value, tolerance, ...rest }: Sourced<number>, share: number, sign: 1 | -1): Sourced<number> {
  return { ...rest, value: Math.max(value + sign * (tolerance ?? share * value), 0.05 * value) };
}
