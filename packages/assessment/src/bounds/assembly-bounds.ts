import type { AssemblyLayer, Material, MaterialLayer } from '@boothwright/language';
import { firstReason, outOfBounds } from './bounds.js';

/** Why a build-up cannot be assessed; null when it can. */
export function assemblyOutOfBounds(name: string, layers: readonly AssemblyLayer[]): string | null {
  return firstReason(
    outOfBounds(`the number of layers of ${name}`, layers.length, 'layers'),
    ...layers.map((layer) => layerOutOfBounds(name, layer)),
  );
}

function layerOutOfBounds(name: string, layer: AssemblyLayer): string | null {
  if (layer.kind === 'air') return outOfBounds(`the air in ${name}`, layer.thickness.value, 'layerThickness', 'm');
  if (layer.kind === 'material') return materialOutOfBounds(name, layer);
  const { width, depth, spacing, lumber, fill } = layer;
  return firstReason(
    outOfBounds(`the width of the frame in ${name}`, width.value, 'studWidth', 'm'),
    outOfBounds(`the depth of the frame in ${name}`, depth.value, 'layerThickness', 'm'),
    outOfBounds(`the spacing of the frame in ${name}`, spacing.value, 'studSpacing', 'm'),
    width.value <= spacing.value ? null : `the studs in ${name} are wider than their spacing`,
    lumber.density === undefined
      ? null
      : outOfBounds(`the density of ${lumber.name}`, lumber.density.value, 'density', 'kg/m3'),
    fill === undefined ? null : materialOutOfBounds(name, fill),
  );
}

const figures = [
  ['density', 'kg/m3'],
  ['modulus', 'Pa'],
  ['poisson', ''],
  ['lossFactor', ''],
  ['resistivity', 'Pa.s/m2'],
  ['flowResistance', 'Pa.s/m'],
] as const satisfies readonly (readonly [keyof Material, string])[];

function materialOutOfBounds(name: string, { material, thickness, surfaceMass }: MaterialLayer): string | null {
  return firstReason(
    thickness === undefined ? null : outOfBounds(`${material.name} in ${name}`, thickness.value, 'layerThickness', 'm'),
    outOfBounds(`the mass of ${material.name} in ${name}`, surfaceMass.value, 'surfaceMass', 'kg/m2'),
    ...figures.map(([figure, unit]) => {
      const sourced = material[figure];
      return sourced === undefined
        ? null
        : outOfBounds(`the ${figure} of ${material.name}`, sourced.value, figure, unit);
    }),
  );
}
