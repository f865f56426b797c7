import { noiseCriterionCurve, octaveBands, thirdLevelsToOctaves, thirdsOfOctave } from '@boothwright/acoustics';
import type { Requirement } from '@boothwright/language';
import type { JudgedContext } from '../assessment-context.js';
import { nominalHz } from '../bands/grid.js';
import type { AssessedBooth } from '../booth/assess-booth.js';
import { isAskedOf } from '../requirements/asked-of.js';
import { hasCriterionCurve } from '../requirements/room-tone-criterion.js';
import type { AssemblyResult, Finding } from '../result/result-document.js';
import { decimals } from '../text/decimals.js';
import { hertz } from '../text/hertz.js';
import { textRange } from '../text/text-range.js';

/** Rw and Rw + Ctr,50-5000 further apart than this, dB, and the single number says nothing about traffic. */
export const mostSpectrumTerm = 10;
/** Octaves that single numbers leave out or hardly count, Hz. */
const lowOctaves = [63, 125];

/**
 * A single-number requirement is met, but the low bands are not served by it: they pass the noise target of the booth, or,
 * without such a target, the traffic rating down to 50 Hz lies far below the weighted rating.
 */
export function ratingHidesLowFrequency(context: JudgedContext): Finding[] {
  const met = context.spec.requirements.filter(
    (requirement) =>
      (requirement.kind === 'rating' || requirement.kind === 'isolation') &&
      context.requirements.some(
        ({ range, verdict }) =>
          verdict === 'met' && range.from === requirement.range.from && range.file === requirement.range.file,
      ),
  );
  const target = context.spec.requirements.find(
    (requirement) =>
      requirement.kind === 'room-tone' &&
      requirement.limit.value.weighting === 'NC' &&
      hasCriterionCurve(requirement.limit.value.decibels),
  );
  return met.flatMap((requirement) => {
    if (target?.kind === 'room-tone' && context.booths.length > 0) {
      return context.booths
        .filter(({ booth: { name } }) => isAskedOf(target, name) && isAskedOf(requirement, name))
        .flatMap((assessed) => againstTarget(requirement, assessed, target.limit.value.decibels));
    }
    if (requirement.kind !== 'rating') return [];
    const assembly = context.assemblies[requirement.assembly.name];
    return assembly === undefined ? [] : againstTrafficRating(requirement, requirement.assembly.name, assembly);
  });
}

function againstTarget(requirement: Requirement, { booth, result }: AssessedBooth, criterion: number): Finding[] {
  const curve = noiseCriterionCurve(criterion);
  const octaves = thirdLevelsToOctaves(result.noise.total.byBand);
  const excess = octaveBands.flatMap((band, octave) => {
    const level = octaves[octave];
    if (level === null || level === undefined || !lowOctaves.includes(band.nominal)) return [];
    const over = level - (curve[octave] as number);
    return over > 0 ? [{ hz: band.nominal, level, limit: curve[octave] as number, over, octave }] : [];
  });
  if (excess.length === 0) return [];
  const worst = excess.reduce((best, entry) => (entry.over > best.over ? entry : best));
  const loss = Math.min(
    ...thirdsOfOctave(worst.octave).map((third) => result.compositeTransmissionLossDb[third] as number),
  );
  return [
    {
      id: 'rating-hides-low-frequency',
      severity: 'warning',
      range: textRange(requirement.range),
      message: `"${requirement.text}" is met, but at ${hertz(worst.hz)} the noise inside ${booth.name} is ${decimals(worst.over, 1)} dB above NC ${decimals(criterion, 0)}`,
      explanation: `Single numbers are ruled by the middle bands: STC starts at 125 Hz, and A-weighting takes 26 dB off at 63 Hz. Traffic, trams and boilers live below that. At ${hertz(worst.hz)} it is ${decimals(worst.level, 1)} dB inside where ${decimals(worst.limit, 0)} dB is asked, and the shell keeps out ${decimals(loss, 1)} dB there in its weakest third.`,
      source: 'Noise inside by octave against the criterion curve. docs/findings/rating-hides-low-frequency.md',
      fix: `Judge by bands: add "require room-tone <= NC ${decimals(criterion, 0)}" beside the single number and work on ${hertz(worst.hz)}: more mass, a deeper cavity, or quieter hours. The shell needs ${decimals(worst.over, 1)} dB more there.`,
      figures: { bandHz: worst.hz, excessDb: worst.over, insideDb: worst.level, limitDb: worst.limit, shellDb: loss },
      related: [{ range: textRange(booth.nameRange), message: 'this booth' }],
    },
  ];
}

function againstTrafficRating(requirement: Requirement, name: string, assembly: AssemblyResult): Finding[] {
  const { rw, stc, ctr50To5000 } = assembly.ratings;
  if (-ctr50To5000 < mostSpectrumTerm) return [];
  const low = assembly.transmissionLossDb
    .map((loss, band) => ({ loss, hz: nominalHz[band] as number }))
    .filter(({ hz }) => hz <= 125)
    .reduce((best, entry) => (entry.loss < best.loss ? entry : best));
  return [
    {
      id: 'rating-hides-low-frequency',
      severity: 'warning',
      range: textRange(requirement.range),
      message: `"${requirement.text}" is met, but against traffic down to 50 Hz ${name} is worth ${rw + ctr50To5000} dB, and at ${hertz(low.hz)} only ${decimals(low.loss, 1)} dB`,
      explanation: `STC ${stc} and Rw ${rw} are ruled by the middle bands. With the spectrum of traffic from 50 Hz to 5 kHz the same curve counts ${rw + ctr50To5000} dB (Rw + Ctr,50-5000). A wall of the same rating without its cavity resonance could serve better there.`,
      source: 'ISO 717-1 adaptation term Ctr,50-5000. docs/findings/rating-hides-low-frequency.md',
      fix: `Give the noise by bands in a "site" and ask for an NC value inside; until then compare build-ups by their figure at ${hertz(low.hz)} as well.`,
      figures: { rw, stc, ctr50To5000, lowestBandHz: low.hz, lowestDb: low.loss },
      related: [{ range: assembly.range, message: 'this build-up' }],
    },
  ];
}
