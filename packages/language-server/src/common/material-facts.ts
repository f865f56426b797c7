import type { Material } from '@boothwright/language';
import { tradeForm } from '@boothwright/presentation';

const told = new WeakMap<Material, string>();

/**
 * The figures of a material by which one chooses, on one line, with how well they are backed. Worked out once for each:
 * every list of materials tells those of the catalogue.
 */
export function materialFacts(material: Material): string {
  let facts = told.get(material);
  if (facts === undefined) {
    facts = factsOf(material);
    told.set(material, facts);
  }
  return facts;
}

function factsOf(material: Material): string {
  const figures = [
    material.density && tradeForm(material.density, 'density'),
    material.surfaceMass && tradeForm(material.surfaceMass, 'surface-mass'),
    material.thickness && tradeForm(material.thickness, 'length'),
    material.resistivity && tradeForm(material.resistivity, 'resistivity'),
    material.flowResistance && tradeForm(material.flowResistance, 'flow-resistance'),
  ].filter((figure) => figure !== undefined);
  return [...figures, weakestEvidence(material)].filter((part) => part !== undefined).join(' · ');
}

/** The figures stand or fall with the least backed of them. */
function weakestEvidence(material: Material): string | undefined {
  const order = ['from-memory', 'stated', 'derived', 'common-practice', 'data-sheet', 'measured', 'published'];
  const kinds = [
    material.density,
    material.surfaceMass,
    material.resistivity,
    material.flowResistance,
    material.modulus,
  ]
    .map((figure) => figure?.origin)
    .flatMap((origin) => (origin === undefined || origin.kind === 'given' ? [] : [origin.evidence as string]));
  return order.find((kind) => kinds.includes(kind))?.replace('-', ' ');
}
