import type { Air } from '@boothwright/acoustics';
import type { Assembly, AssemblyLayer, Booth, Face } from '@boothwright/language';
import { type Construction, constructionOf } from '../assembly/construction.js';
import { withJoinedLeaf } from '../assembly/joined-leaf.js';
import { ratingsOf } from '../assembly/ratings.js';
import { referencePanel } from '../assembly/reference-panel.js';
import { leavesOnAirHz, resonancesOf } from '../assembly/resonances.js';
import { transmissionLossOf } from '../assembly/transmission-loss.js';
import type { JudgedContext } from '../assessment-context.js';
import { faceNames } from '../booth/geometry.js';
import { facePatches } from '../booth/linings.js';
import type { TextRange } from '../result/result-document.js';
import { decimals } from '../text/decimals.js';
import { hertz } from '../text/hertz.js';
import { insteadOf } from '../text/instead-of.js';
import { joined } from '../text/joined.js';
import { textRange } from '../text/text-range.js';
import type { Found } from './found.js';
import { withBuildUp } from './with-build-up.js';

/** Three or more leaves: more resonances, and the lowest of them higher than two leaves of the same mass and depth would have. */
export function thirdLeaf(context: JudgedContext): Found[] {
  const alone = [...context.spec.assemblies.values()].flatMap((assembly) =>
    leafFinding(
      context,
      assembly.name,
      assembly.layers,
      textRange(thirdLeafRange(assembly)),
      textRange(assembly.nameRange),
      (layers) => (booth) => withBuildUp(booth, assembly.name, layers),
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
        return leafFinding(context, name, patch.layers, textRange(lining.range), textRange(built.range), (layers) =>
          withWholeWall(built.assembly.name, layers, lining.faces),
        );
      });
    });
  });
  return [...alone, ...lined];
}

/** Faces of a build-up that carry a lining get the changed layers of both, and the lining is no longer counted there. */
function withWholeWall(name: string, layers: readonly AssemblyLayer[], faces: readonly Face[]) {
  return (booth: Booth): Booth => {
    const own = faces.filter(
      // A face that is covered in part has patches of two kinds, and the text could not say what was moved.
      (face) => booth.faces[face]?.assembly.name === name && facePatches(booth, face).length === 1,
    );
    const changed = Object.fromEntries(
      own.flatMap((face) => {
        const built = booth.faces[face];
        return built === undefined ? [] : [[face, { ...built, assembly: { ...built.assembly, layers } }]];
      }),
    );
    return {
      ...booth,
      faces: { ...booth.faces, ...changed },
      linings: booth.linings.map((lining) => ({
        ...lining,
        faces: lining.faces.filter((face) => !own.includes(face)),
      })),
    };
  };
}

/** The layer that makes the third leaf. */
function thirdLeafRange(assembly: Assembly) {
  const index = assembly.layers.findIndex(
    (_, last) => constructionOf(assembly.layers.slice(0, last + 1)).leaves.length >= 3,
  );
  return assembly.layers[index]?.range ?? assembly.nameRange;
}

/** A move must lower the lowest resonance to this share of it at most, and ... */
const worthwhileShare = 0.95;
/** ... raise one of the two ratings by this and lower neither, to be offered. */
const worthwhilePoints = 1;

interface Move {
  readonly leaf: number;
  readonly to: 'outer' | 'inner';
  readonly layers: readonly AssemblyLayer[];
  readonly resonances: readonly number[];
  readonly stc: number;
  /** Rw + Ctr,50-5000, which counts the low bands. */
  readonly low: number;
}

function leafFinding(
  context: JudgedContext,
  name: string,
  layers: readonly AssemblyLayer[],
  range: TextRange,
  whole: TextRange,
  fixed: (layers: readonly AssemblyLayer[]) => (booth: Booth) => Booth,
): Found[] {
  const construction = constructionOf(layers);
  if (construction.leaves.length < 3) return [];
  const ratings = (changed: readonly AssemblyLayer[]) => {
    const { stc, rw, ctr50To5000 } = ratingsOf(
      transmissionLossOf(changed, referencePanel, context.air, context.memo).total,
    );
    return { stc, low: rw + ctr50To5000 };
  };
  const now = ratings(layers);
  const move = bestMove(context, layers, construction, ratings, now);
  if (move === null) return [];
  const resonances = resonancesOf(construction, context.air);
  const mass = construction.leaves.reduce((sum, leaf) => sum + leaf.mass, 0);
  const two = twoLeavesHz(construction, mass, context.air);
  const lowest = resonances[0] as number;
  const figures: Record<string, number> = {
    leaves: construction.leaves.length,
    twoLeavesHz: two,
    massKgPerM2: mass,
    stc: now.stc,
    rwPlusCtr50: now.low,
    movedStc: move.stc,
    movedRwPlusCtr50: move.low,
  };
  resonances.forEach((hz, index) => {
    figures[`resonance${index + 1}Hz`] = hz;
  });
  move.resonances.forEach((hz, index) => {
    figures[`movedResonance${index + 1}Hz`] = hz;
  });
  const moved = joined(construction.leaves[move.leaf]?.names ?? []);
  const onto = joined(construction.leaves[move.leaf + (move.to === 'outer' ? -1 : 1)]?.names ?? []);
  const studs = layers.filter((layer) => layer.kind === 'frame').length > 1;
  return [
    {
      id: 'third-leaf',
      severity: 'warning',
      range,
      message: `${name} has ${construction.leaves.length} leaves: they resonate at ${joined(resonances.map(hertz))}, where two leaves of the same weight and depth would at ${hertz(two)}`,
      explanation: `Each gap is a spring of its own, and two short springs are stiffer than one long one. Below its lowest resonance a wall is no better than its weight, and here that is ${hertz(lowest)}, where two equal leaves would reach down to ${hertz(two)}: in between, where traffic and low voices lie, the third leaf makes the wall worse. It helps only well above ${hertz(resonances.at(-1) as number)}.`,
      source:
        'Eigenfrequencies of the chain of leaves and air springs; two leaves of half the mass each at the same total spring depth. docs/findings/third-leaf.md',
      fix: `Put the middle leaf (${moved}) onto the ${move.to} side (${onto}) and leave the whole depth open between${studs ? ', the two frames not touching' : ''}: ${move.resonances.length > 1 ? 'resonances' : 'the resonance'} at ${joined(move.resonances.map(hertz))}, ${insteadOf('STC', move.stc, now.stc)}, Rw + Ctr,50-5000 ${decimals(move.low, 0)} instead of ${decimals(now.low, 0)} dB, for the panel alone.`,
      figures,
      related: [{ range: whole, message: 'of this build-up' }],
      fixed: fixed(move.layers),
    },
  ];
}

/** Every inner leaf put against its outer or inner neighbour; the one that helps the low bands most, or none. */
function bestMove(
  context: JudgedContext,
  layers: readonly AssemblyLayer[],
  construction: Construction,
  ratings: (layers: readonly AssemblyLayer[]) => { readonly stc: number; readonly low: number },
  now: { readonly stc: number; readonly low: number },
): Move | null {
  const lowest = resonancesOf(construction, context.air)[0] as number;
  const inner = construction.leaves.map((_, index) => index).slice(1, -1);
  const moves = inner.flatMap((leaf) =>
    (['outer', 'inner'] as const).flatMap((to): Move[] => {
      const changed = withJoinedLeaf(layers, leaf, to);
      if (changed === undefined) return [];
      return [
        {
          leaf,
          to,
          layers: changed,
          resonances: resonancesOf(constructionOf(changed), context.air),
          ...ratings(changed),
        },
      ];
    }),
  );
  const helpful = moves.filter(
    ({ stc, low, resonances }) =>
      (resonances[0] as number) <= worthwhileShare * lowest &&
      stc >= now.stc &&
      low >= now.low &&
      (stc - now.stc >= worthwhilePoints || low - now.low >= worthwhilePoints),
  );
  return helpful.reduce<Move | null>(
    (best, move) =>
      best === null || move.low > best.low || (move.low === best.low && move.stc > best.stc) ? move : best,
    null,
  );
}

/** Two leaves of half the mass each on all the springs in a row. */
function twoLeavesHz({ gaps }: Construction, mass: number, air: Air): number {
  const gap = gaps.reduce((sum, { air: open, fill }) => ({ air: sum.air + open, fill: sum.fill + fill }), {
    air: 0,
    fill: 0,
  });
  return leavesOnAirHz([mass / 2, mass / 2], [gap], air)[0] as number;
}
