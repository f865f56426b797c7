import type { AssemblyLayer, Material, MaterialLayer, ResilientFixings } from '@boothwright/language';
import { firstReason, outOfBounds } from './bounds.js';

/** Why a build-up cannot be assessed; null when it can. */
export function assemblyOutOfBounds(name: string, layers: readonly AssemblyLayer[]): string | null {
  return firstReason(
    outOfBounds(`the number of layers of ${name}`, layers.length, 'layers'),
    ...layers.map((layer) => layerOutOfBounds(name, layer)),
  );
}

function layerOutOfBounds(name: string, layer: AssemblyLayer): string | null {
  if (layer.kind === 'air')
    return firstReason(
      outOfBounds(`the air in ${name}`, layer.thickness.value, 'layerThickness', 'm'),
      ...fixingsOutOfBounds(name, layer.fixings),
    );
  if (layer.kind === 'material') return materialOutOfBounds(name, layer);
  const { width, depth, spacing, lumber, screws, fill } = layer;
  return firstReason(
    outOfBounds(`the width of the frame in ${name}`, width.value, 'studWidth', 'm'),
    outOfBounds(`the depth of the frame in ${name}`, depth.value, 'layerThickness', 'm'),
    outOfBounds(`the spacing of the frame in ${name}`, spacing.value, 'studSpacing', 'm'),
    width.value <= spacing.value ? null : `the studs in ${name} are wider than their spacing`,
    lumber.density === undefined
      ? null
      : outOfBounds(`the density of ${lumber.name}`, lumber.density.value, 'density', 'kg/m3'),
    lumber.gauge === undefined ? null : outOfBounds(`the gauge of ${lumber.name}`, lumber.gauge.value, 'gauge', 'm'),
    lumber.studStiffness === undefined
      ? null
      : outOfBounds(`the stud-stiffness of ${lumber.name}`, lumber.studStiffness.value, 'modulus', 'Pa'),
    screws === undefined ? null : outOfBounds(`the screws in ${name}`, screws.value, 'studSpacing', 'm'),
    fill === undefined ? null : materialOutOfBounds(name, fill),
  );
}

function fixingsOutOfBounds(name: string, fixings: ResilientFixings | undefined): readonly (string | null)[] {
  if (fixings === undefined) return [];
  const { kind, spacing, stiffness } = fixings;
  return [
    outOfBounds(`the distance of the ${kind} in ${name}`, spacing.value, 'studSpacing', 'm'),
    outOfBounds(`the stiffness of the ${kind} in ${name}`, stiffness.value, 'stiffness', 'N/m'),
  ];
}

const figures = [
  ['density', 'kg/m3'],
  ['modulus', 'Pa'],
  ['modulusAcross', 'Pa'],
  ['shearModulus', 'Pa'],
  ['poisson', ''],
  ['lossFactor', ''],
  ['resistivity', 'Pa.s/m2'],
  ['flowResistance', 'Pa.s/m'],
] as const satisfies readonly (readonly [keyof Material, string])[];

function boundOf(figure: (typeof figures)[number][0]) {
  return figure === 'modulusAcross' || figure === 'shearModulus' ? 'modulus' : figure;
}

function materialOutOfBounds(name: string, { material, thickness, surfaceMass }: MaterialLayer): string | null {
  return firstReason(
    thickness === undefined ? null : outOfBounds(`${material.name} in ${name}`, thickness.value, 'layerThickness', 'm'),
    outOfBounds(`the mass of ${material.name} in ${name}`, surfaceMass.value, 'surfaceMass', 'kg/m2'),
    ...figures.map(([figure, unit]) => {
      const sourced = material[figure];
      return sourced === undefined
        ? null
        : outOfBounds(`the ${figure} of ${material.name}`, sourced.value, boundOf(figure), unit);
    }),
  );
}
