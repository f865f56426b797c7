import type { AssemblyLayer, Material, MaterialLayer, Sourced } from '@boothwright/language';
import { bounds } from '../bounds/bounds.js';

interface Alternatives {
  readonly up: readonly AssemblyLayer[];
  readonly down: readonly AssemblyLayer[];
}

/** For every stated tolerance of the build-up, the build-up with that figure alone raised and lowered by it. */
export function toleranceVariants(assembly: readonly AssemblyLayer[]): Alternatives[] {
  return assembly.flatMap((layer, index) =>
    layerAlternatives(layer).map(([up, down]) => ({
      up: assembly.with(index, up),
      down: assembly.with(index, down),
    })),
  );
}

function layerAlternatives(layer: AssemblyLayer): [AssemblyLayer, AssemblyLayer][] {
  if (layer.kind === 'air') return pairs(layer.thickness, (thickness) => ({ ...layer, thickness }));
  if (layer.kind === 'material') return materialAlternatives(layer);
  const { fill } = layer;
  return [
    ...pairs(layer.depth, (depth) => ({ ...layer, depth })),
    ...pairs(layer.spacing, (spacing) => ({ ...layer, spacing })),
    ...(fill === undefined
      ? []
      : materialAlternatives(fill).map(([up, down]): [AssemblyLayer, AssemblyLayer] => [
          { ...layer, fill: up },
          { ...layer, fill: down },
        ])),
  ];
}

const materialFigures = [
  'density',
  'modulus',
  'modulusAcross',
  'shearModulus',
  'poisson',
  'lossFactor',
  'resistivity',
  'flowResistance',
] as const;

function materialAlternatives(layer: MaterialLayer): [MaterialLayer, MaterialLayer][] {
  const { material } = layer;
  // A plate's mass follows from density and thickness; only sheets known by their mass alone vary with it.
  const massMatters = material.kind !== 'panel' || layer.thickness === undefined;
  return [
    ...(layer.thickness === undefined ? [] : pairs(layer.thickness, (thickness) => ({ ...layer, thickness }))),
    ...(massMatters ? pairs(layer.surfaceMass, (surfaceMass) => ({ ...layer, surfaceMass })) : []),
    ...materialFigures.flatMap((figure) => {
      const sourced = material[figure];
      if (sourced === undefined) return [];
      if (figure === 'density' && material.kind !== 'panel' && material.kind !== 'porous') return [];
      const most = figure === 'poisson' || figure === 'lossFactor' ? bounds[figure].max : Number.POSITIVE_INFINITY;
      return pairs(sourced, (value) => ({ ...layer, material: { ...material, [figure]: value } as Material }), most);
    }),
  ];
}

function pairs<T>(
  sourced: Sourced<number>,
  make: (value: Sourced<number>) => T,
  most = Number.POSITIVE_INFINITY,
): [T, T][] {
  const { tolerance, value } = sourced;
  if (tolerance === undefined || tolerance <= 0) return [];
  // A tolerance as wide as the value itself would reach a thickness or density of nothing.
  const low = Math.max(value - tolerance, value * 0.05);
  // Nor may one reach beyond what a plate can have.
  const high = Math.max(value, Math.min(value + tolerance, most));
  return [[make({ ...sourced, value: high }), make({ ...sourced, value: low })]];
}
