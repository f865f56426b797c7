import type { Assembly, AssemblyLayer, Booth } from '@boothwright/language';
import { type Construction, constructionOf } from '../assembly/construction.js';
import { gapLayers, withDeeperGap, withFibre, withoutGap } from '../assembly/gap-layers.js';
import { ratingsOf } from '../assembly/ratings.js';
import { referencePanel } from '../assembly/reference-panel.js';
import { resonancesOf } from '../assembly/resonances.js';
import { transmissionLossOf } from '../assembly/transmission-loss.js';
import type { JudgedContext } from '../assessment-context.js';
import { bandIndexOf, exactHz } from '../bands/grid.js';
import { decimals } from '../text/decimals.js';
import { hertz } from '../text/hertz.js';
import { insteadOf } from '../text/instead-of.js';
import { joined } from '../text/joined.js';
import { textRange } from '../text/text-range.js';
import type { Found } from './found.js';
import { inVoiceRange, nominalOf, sourcesWithEnergyAt, voiceRange } from './source-energy.js';
import { withBuildUp } from './with-build-up.js';

/** Gap depths that the fix tries, m, beside twice the present one; deeper than that a booth wall stops being a wall. */
const triedGaps = [0.05, 0.1, 0.15, 0.2];
/**
 * The first of them is offered that helps by this in the band of the dip, dB, and either moves the resonance below the
 * voice or raises STC by as much: a dip that only moves within the voice is no help. Failing that, the deepest.
 */
const worthwhileDb = 5;

/**
 * The air between two leaves is a spring, and its resonance lies where a source of the text, or the voice, has energy.
 * Build-ups of two leaves; those of three or more are the affair of `third-leaf`.
 */
export function cavityResonanceInBand(context: JudgedContext): Found[] {
  return [...context.spec.assemblies.values()].flatMap((assembly) => {
    const construction = constructionOf(assembly.layers);
    if (construction.leaves.length !== 2) return [];
    const resonance = resonancesOf(construction, context.air)[0];
    if (resonance === undefined) return [];
    const band = bandIndexOf(resonance);
    if (band < 0 || band >= exactHz.length) return [];
    const sources = sourcesWithEnergyAt(context, band);
    if (sources.length === 0 && !inVoiceRange(resonance)) return [];
    return [finding(context, assembly, construction, resonance, band, sources)];
  });
}

function finding(
  context: JudgedContext,
  assembly: Assembly,
  construction: Construction,
  resonance: number,
  band: number,
  sources: readonly string[],
): Found {
  const { layers } = assembly;
  const gapIndexes = gapLayers(layers)[0] ?? [];
  const gapLayer = layers[gapIndexes[0] ?? 0] ?? layers[0];
  const lossAt = (changed: readonly AssemblyLayer[]) =>
    transmissionLossOf(changed, referencePanel, context.air, context.memo).total;
  const loss = lossAt(layers);
  const closed = lossAt(withoutGap(layers, gapIndexes));
  const where = [
    ...(sources.length > 0 ? [`where ${joined(sources)} ${sources.length > 1 ? 'have their' : 'has its'} energy`] : []),
    ...(inVoiceRange(resonance) ? ['in the voice'] : []),
  ].join(' and ');
  const dip = dipBand(loss, band);
  const name = hertz(nominalOf(dip));
  const at = loss[dip] as number;
  const closedAt = closed[dip] as number;
  const stc = ratingsOf(loss).stc;
  const closedStc = ratingsOf(closed).stc;
  const figures: Record<string, number> = {
    resonanceHz: resonance,
    bandHz: nominalOf(dip),
    transmissionLossDb: at,
    withoutGapDb: closedAt,
    stc,
    withoutGapStc: closedStc,
  };
  const gap = construction.gaps[0];
  const depth = (gap?.air ?? 0) + (gap?.fill ?? 0);
  const { words: fix, changed } = deeperGapFix(context, layers, gapIndexes, resonance, dip, depth, figures);
  return {
    id: 'cavity-resonance-in-band',
    severity: 'warning',
    range: textRange(gapLayer?.range ?? assembly.nameRange),
    message: `${assembly.name}: the two leaves resonate on the ${decimals(depth * 1000, 0)} mm between them at ${hertz(resonance)}, ${where}`,
    explanation: `Two masses with air between them are masses on a spring. Near ${hertz(resonance)} they move against each other and the wall lets through more than its weight suggests: ${decimals(at, 1)} dB at ${name}, where the same layers in contact would keep out ${decimals(closedAt, 1)} dB. Well above the resonance the gap pays off.`,
    source:
      'Mass-air-mass resonance, 1/(2 pi) sqrt(s (1/m1 + 1/m2)) with the spring s = rho c^2/d of the air; fibre makes the spring 1.4 times softer. docs/findings/cavity-resonance-in-band.md',
    fix: `As it is, ${decimals(at, 1)} dB at ${name} and STC ${decimals(stc, 0)}. ${fix} With the two leaves in contact instead: ${decimals(closedAt, 1)} dB at ${name}, ${insteadOf('STC', closedStc, stc)}. All figures for the panel alone.`,
    figures,
    related:
      construction.leaves.length === 2 ? [{ range: textRange(assembly.nameRange), message: 'of this build-up' }] : [],
    ...(changed === undefined ? {} : { fixed: (booth: Booth) => withBuildUp(booth, assembly.name, changed) }),
  };
}

/**
 * The band in which the resonance shows: its own or the next one. Sound that arrives at an angle drives it at a higher
 * frequency, so in a diffuse field the dip lies a little above.
 */
function dipBand(loss: readonly number[], band: number): number {
  const next = band + 1;
  return next < loss.length && (loss[next] as number) < (loss[band] as number) ? next : band;
}

/** The shallowest gap that helps, empty gaps with fibre in them, or the deepest that is tried, with what it gives. */
function deeperGapFix(
  context: JudgedContext,
  layers: readonly AssemblyLayer[],
  gapIndexes: readonly number[],
  resonance: number,
  dip: number,
  depth: number,
  figures: Record<string, number>,
): { readonly words: string; readonly changed?: readonly AssemblyLayer[] } {
  const deepest = triedGaps.at(-1) as number;
  const depths = [2 * depth, ...triedGaps]
    .filter((tried) => tried > 1.2 * depth && tried <= deepest)
    .sort((a, b) => a - b);
  const empty = gapIndexes.every((index) => layers[index]?.kind === 'air');
  const at = (deeper: number) => {
    const widened = withDeeperGap(layers, gapIndexes, deeper - depth);
    const changed = empty ? withFibre(widened, gapIndexes) : widened;
    return {
      deeper,
      changed,
      moved: resonancesOf(constructionOf(changed), context.air)[0] ?? resonance,
      loss: transmissionLossOf(changed, referencePanel, context.air, context.memo).total,
    };
  };
  const now = figures.transmissionLossDb as number;
  const helps = ({ moved, loss }: ReturnType<typeof at>) =>
    (loss[dip] as number) >= now + worthwhileDb &&
    (moved < voiceRange.fromHz || ratingsOf(loss).stc >= (figures.stc as number) + worthwhileDb);
  // One after the other: what lies deeper than the first that helps need not be worked out.
  let best: ReturnType<typeof at> | undefined;
  for (const deeper of depths) {
    best = at(deeper);
    if (helps(best)) break;
  }
  if (best === undefined) {
    return { words: 'The gap is already deep; more mass in the lighter leaf lowers the resonance.' };
  }
  const { deeper, changed, moved, loss } = best;
  figures.deeperGapM = deeper;
  figures.deeperGapResonanceHz = moved;
  figures.deeperGapDb = loss[dip] as number;
  figures.deeperGapStc = ratingsOf(loss).stc;
  const gap = `A gap of ${decimals(deeper * 1000, 0)} mm${empty ? ' filled with mineral fibre' : ''}`;
  const words = `${gap} moves it to ${hertz(moved)}: ${decimals(loss[dip] as number, 1)} dB at ${hertz(nominalOf(dip))}, STC ${figures.deeperGapStc}.`;
  return { words, changed };
}
