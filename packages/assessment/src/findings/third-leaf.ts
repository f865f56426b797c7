import { massAirMassFrequency } from '@boothwright/acoustics';
import type { Assembly, AssemblyLayer } from '@boothwright/language';
import { type Construction, constructionOf } from '../assembly/construction.js';
import { resonancesOf, springThickness } from '../assembly/resonances.js';
import type { JudgedContext } from '../assessment-context.js';
import { faceNames } from '../booth/geometry.js';
import { facePatches } from '../booth/linings.js';
import type { Finding, TextRange } from '../result/result-document.js';
import { decimals } from '../text/decimals.js';
import { hertz } from '../text/hertz.js';
import { joined } from '../text/joined.js';
import { textRange } from '../text/text-range.js';

/** Three or more leaves: more resonances, and the lowest of them higher than two leaves of the same mass and depth would have. */
export function thirdLeaf(context: JudgedContext): Finding[] {
  const alone = [...context.spec.assemblies.values()].flatMap((assembly) =>
    leafFinding(
      context,
      assembly.name,
      assembly.layers,
      textRange(thirdLeafRange(assembly)),
      textRange(assembly.nameRange),
    ),
  );
  const lined = context.booths.flatMap(({ booth }) => {
    const named = new Set<string>();
    return faceNames.flatMap((face) => {
      const built = booth.faces[face];
      const lining = booth.linings.find((candidate) => candidate.faces.includes(face));
      if (built === undefined || lining === undefined) return [];
      const own = constructionOf(built.assembly.layers).leaves.length;
      return facePatches(booth, face).flatMap((patch) => {
        const key = `${built.assembly.name} ${patch.layers.length} ${lining.range.from}`;
        // The build-up alone has its own finding; here only a lining that adds the leaf counts.
        if (own >= 3 || named.has(key)) return [];
        named.add(key);
        const name = `${built.assembly.name} with the lining of ${booth.name}`;
        return leafFinding(context, name, patch.layers, textRange(lining.range), textRange(built.range));
      });
    });
  });
  return [...alone, ...lined];
}

/** The layer that makes the third leaf. */
function thirdLeafRange(assembly: Assembly) {
  const index = assembly.layers.findIndex(
    (_, last) => constructionOf(assembly.layers.slice(0, last + 1)).leaves.length >= 3,
  );
  return assembly.layers[index]?.range ?? assembly.nameRange;
}

function leafFinding(
  context: JudgedContext,
  name: string,
  layers: readonly AssemblyLayer[],
  range: TextRange,
  whole: TextRange,
): Finding[] {
  const construction = constructionOf(layers);
  if (construction.leaves.length < 3) return [];
  const resonances = resonancesOf(construction, context.air);
  const mass = construction.leaves.reduce((sum, leaf) => sum + leaf.mass, 0);
  const depth = construction.gaps.reduce((sum, gap) => sum + springThickness(gap), 0);
  const two = massAirMassFrequency(mass / 2, mass / 2, depth, context.air);
  const lowest = resonances[0] as number;
  const figures: Record<string, number> = {
    leaves: construction.leaves.length,
    twoLeavesHz: two,
    massKgPerM2: mass,
    springDepthM: depth,
  };
  resonances.forEach((hz, index) => {
    figures[`resonance${index + 1}Hz`] = hz;
  });
  return [
    {
      id: 'third-leaf',
      severity: 'warning',
      range,
      message: `${name} has ${construction.leaves.length} leaves: they resonate at ${joined(resonances.map(hertz))}, where two leaves of the same weight and depth would at ${hertz(two)}`,
      explanation: `Each gap is a spring of its own, and two short springs are stiffer than one long one. Below its lowest resonance a wall is no better than its weight, and here that is ${hertz(lowest)} instead of ${hertz(two)}: in between, where traffic and low voices lie, the third leaf makes the wall worse. It helps only well above ${hertz(resonances.at(-1) as number)}.`,
      source:
        'Eigenfrequencies of the chain of leaves and air springs; two leaves of half the mass each at the same total spring depth. docs/findings/third-leaf.md',
      fix: `Move the middle leaf (${middleWords(construction)}) onto one of the outer ones: with ${decimals(mass, 1)} kg/m2 in two equal leaves and the whole depth between them the resonance falls to ${hertz(two)}.`,
      figures,
      related: [{ range: whole, message: 'of this build-up' }],
    },
  ];
}

function middleWords(construction: Construction): string {
  return joined(construction.leaves.slice(1, -1).flatMap((leaf) => leaf.names));
}
