import type { Assembly, AssemblyLayer } from '@boothwright/language';
import { referencePanel } from '../assembly/assess-assembly.js';
import { type Construction, constructionOf } from '../assembly/construction.js';
import { gapLayers, withDeeperGap, withoutGap } from '../assembly/gap-layers.js';
import { ratingsOf } from '../assembly/ratings.js';
import { resonancesOf, springThickness } from '../assembly/resonances.js';
import { transmissionLossOf } from '../assembly/transmission-loss.js';
import type { JudgedContext } from '../assessment-context.js';
import { bandIndexOf, exactHz } from '../bands/grid.js';
import type { Finding } from '../result/result-document.js';
import { decimals } from '../text/decimals.js';
import { hertz } from '../text/hertz.js';
import { joined } from '../text/joined.js';
import { textRange } from '../text/text-range.js';
import { inVoiceRange, nominalOf, sourcesWithEnergyAt, voiceRange } from './source-energy.js';

/** The fix moves the resonance at least two thirds of an octave down, so that it leaves its band, and below the voice. */
const leastShift = 2 ** (2 / 3);
/** A deeper gap is offered up to here, m: beyond it a booth wall stops being a wall. */
const deepestGap = 0.2;

/**
 * The air between two leaves is a spring, and its resonance lies where a source of the text, or the voice, has energy.
 * Build-ups of two leaves; those of three or more are the affair of `third-leaf`.
 */
export function cavityResonanceInBand(context: JudgedContext): Finding[] {
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
): Finding {
  const { layers } = assembly;
  const gapIndexes = gapLayers(layers)[0] ?? [];
  const gapLayer = layers[gapIndexes[0] ?? 0] ?? layers[0];
  const lossAt = (changed: readonly AssemblyLayer[]) =>
    transmissionLossOf(changed, referencePanel, context.air, context.memo).total;
  const loss = lossAt(layers);
  const closed = lossAt(withoutGap(layers, gapIndexes));
  const where = [
    ...(sources.length > 0 ? [`where ${joined(sources)} has its energy`] : []),
    ...(inVoiceRange(resonance) ? ['in the voice'] : []),
  ].join(' and ');
  const name = hertz(nominalOf(band));
  const at = loss[band] as number;
  const closedAt = closed[band] as number;
  const figures: Record<string, number> = {
    resonanceHz: resonance,
    bandHz: nominalOf(band),
    transmissionLossDb: at,
    withoutGapDb: closedAt,
    stc: ratingsOf(loss).stc,
    withoutGapStc: ratingsOf(closed).stc,
  };
  const gap = construction.gaps[0];
  const depth = (gap?.air ?? 0) + (gap?.fill ?? 0);
  const fix = deeperGapFix(context, layers, gapIndexes, construction, resonance, band, depth, figures);
  return {
    id: 'cavity-resonance-in-band',
    severity: 'warning',
    range: textRange(gapLayer?.range ?? assembly.nameRange),
    message: `${assembly.name}: the two leaves resonate on the ${decimals(depth * 1000, 0)} mm between them at ${hertz(resonance)}, ${where}`,
    explanation: `Two masses with air between them are masses on a spring. Near ${hertz(resonance)} they move against each other and the wall lets through more than its weight suggests: ${decimals(at, 1)} dB at ${name}, where the same layers in contact would keep out ${decimals(closedAt, 1)} dB. Well above the resonance the gap pays off.`,
    source:
      'Mass-air-mass resonance, 1/(2 pi) sqrt(s (1/m1 + 1/m2)) with the spring s = rho c^2/d of the air; fibre makes the spring 1.4 times softer. docs/findings/cavity-resonance-in-band.md',
    fix: `${fix} Without the gap: ${decimals(closedAt, 1)} dB at ${name}, STC ${figures.withoutGapStc} instead of ${figures.stc}. All figures for the panel alone.`,
    figures,
    related:
      construction.leaves.length === 2 ? [{ range: textRange(assembly.nameRange), message: 'of this build-up' }] : [],
  };
}

/** The depth that moves the resonance below the voice, or the deepest that is offered, with what it gives. */
function deeperGapFix(
  context: JudgedContext,
  layers: readonly AssemblyLayer[],
  gapIndexes: readonly number[],
  construction: Construction,
  resonance: number,
  band: number,
  depth: number,
  figures: Record<string, number>,
): string {
  const gap = construction.gaps[0];
  if (gap === undefined || depth >= deepestGap) {
    return 'The gap is already deep; more mass in the lighter leaf lowers the resonance.';
  }
  // The frequency falls with the root of the spring thickness; added depth is air.
  const target = Math.min(voiceRange.fromHz, resonance / leastShift);
  const needed = springThickness(gap) * ((resonance / target) ** 2 - 1);
  const extra = Math.min(needed, deepestGap - depth);
  const deeper = withDeeperGap(layers, gapIndexes, extra);
  const moved = resonancesOf(constructionOf(deeper), context.air)[0] ?? resonance;
  const loss = transmissionLossOf(deeper, referencePanel, context.air, context.memo).total;
  figures.deeperGapM = depth + extra;
  figures.deeperGapResonanceHz = moved;
  figures.deeperGapDb = loss[band] as number;
  figures.deeperGapStc = ratingsOf(loss).stc;
  return `A gap of ${decimals((depth + extra) * 1000, 0)} mm moves it to ${hertz(moved)}: ${decimals(loss[band] as number, 1)} dB at ${hertz(nominalOf(band))}, STC ${figures.deeperGapStc}.`;
}
