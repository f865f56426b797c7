import type { MaterialLayer, Sourced, SourceRange } from '@boothwright/language';

/** Fibre that stands for any ordinary mineral wool where a fix proposes one. Evidence: common practice. */
export const genericFibre = { resistivity: 12_000, density: 40 } as const;

/** A layer of generic fibre, m, where a fix proposes one. */
export function fibreLayer(thickness: number, range: SourceRange): MaterialLayer {
  const practice = (value: number): Sourced<number> => ({
    value,
    origin: { kind: 'default', name: 'generic-fibre', evidence: 'common-practice', source: 'ordinary mineral wool' },
    range,
  });
  return {
    kind: 'material',
    material: {
      name: 'mineral fibre',
      nameRange: range,
      range,
      kind: 'porous',
      resistivity: practice(genericFibre.resistivity),
      density: practice(genericFibre.density),
      fromCatalogue: false,
    },
    materialRange: range,
    thickness: practice(thickness),
    surfaceMass: practice(genericFibre.density * thickness),
    range,
  };
}
